/**
 * How long batteries last, as values: what each device draws in each state, what each battery gives in the cold and at its
 * age. Every figure errs on the careful side: colder, older, or more draw never gives more time.
 */
package org.straddle.kit.energy;
