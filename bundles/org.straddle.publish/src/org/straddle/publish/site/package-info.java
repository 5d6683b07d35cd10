/** One page for each team and stop: where, when, whom to call, what may hurt and what to do, and proof of the squares. */
package org.straddle.publish.site;
