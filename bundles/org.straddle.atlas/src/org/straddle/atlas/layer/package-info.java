/** What lies on a map: the base map, squares, and the layers of users, as feature collections. */
package org.straddle.atlas.layer;
