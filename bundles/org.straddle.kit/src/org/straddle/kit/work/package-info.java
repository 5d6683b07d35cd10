/**
 * Can a kit do a mode of work, and what ends it? Values only; nothing here knows the event.
 *
 * <p>A mode of work is a monotone formula over the pieces of a kit: one more piece never makes it fail. Pieces need
 * functions of others; what works is the least fixpoint, so two things that only supply each other never work.
 *
 * <p>Minimal cut sets come from a hitting-set tree (R. Reiter, "A Theory of Diagnosis from First Principles", 1987): take
 * a smallest set of pieces that suffices, a cut must take one of them away, and so on with what is left. It is exact up to
 * the order asked for. The cheapest addition is a least-cost hitting set over sets of which each solution needs a member
 * (implicit hitting sets: J. Davies and F. Bacchus, "Solving MAXSAT by Solving a Sequence of Simpler SAT Instances", 2011;
 * E. Moreno-Centeno and R. Karp, "The Implicit Hitting Set Approach", 2013). Plain evaluation of the formula serves as its
 * oracle, so no solver is needed.
 */
package org.straddle.kit.work;
