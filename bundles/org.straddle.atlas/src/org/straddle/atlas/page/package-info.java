/** A map as a page of a PDF document. */
package org.straddle.atlas.page;
