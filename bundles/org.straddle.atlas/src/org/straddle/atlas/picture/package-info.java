/** What a map shows at one zoom: a list of drawing instructions, made off the window's thread. */
package org.straddle.atlas.picture;
