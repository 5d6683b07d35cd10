/** Every safety figure of a site with what it follows from, its source, its range, and a refusal outside it. */
package org.straddle.safety.explain;
