/** Putting the mark of a site where it should be, and saying exactly where that is. */
package org.straddle.atlas.mark;
