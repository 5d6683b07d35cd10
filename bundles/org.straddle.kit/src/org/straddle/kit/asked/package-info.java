/**
 * What the plan puts on a team's packing list besides gear for working: things that the measures at its sites name, that
 * traffic, line and heat ask for, and that the crew needs; each with its reasons, and what of it is packed.
 */
package org.straddle.kit.asked;
