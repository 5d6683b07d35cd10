/** Drawing instructions that a screen, a picture and a page carry out alike. */
package org.straddle.drawing;
