/** What an event puts on a map: sites, bases, drives, demand, and the reach of a pass, laid on its plane. */
package org.straddle.atlas.scene;
