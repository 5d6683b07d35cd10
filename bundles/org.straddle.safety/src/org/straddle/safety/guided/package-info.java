/** A review of a site, one question after the other: what to ask, what facts propose, and the visit and review that come of the answers. */
package org.straddle.safety.guided;
