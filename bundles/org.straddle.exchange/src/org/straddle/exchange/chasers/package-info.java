/** Lists of chasers who say which squares they need: tables, and request lines pasted from mails. */
package org.straddle.exchange.chasers;
