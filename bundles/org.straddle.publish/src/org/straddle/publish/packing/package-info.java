/**
 * The packing list of a team on paper and on the phone: a page to print with boxes, as HTML and as PDF, plain text, and a
 * page that ticks by itself without a network.
 */
package org.straddle.publish.packing;
