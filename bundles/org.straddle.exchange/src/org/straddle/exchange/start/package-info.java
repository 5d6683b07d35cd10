/**
 * How a new event begins: things written one on a line, as people have them in mails and notes, and what an event still
 * lacks. {@link org.straddle.exchange.start.EventStart} puts the lines together.
 */
package org.straddle.exchange.start;
