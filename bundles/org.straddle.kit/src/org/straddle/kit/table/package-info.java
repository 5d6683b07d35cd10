/**
 * Kits as tables: what a column says and means, a table read into an event without changing anything until all of it is
 * right, and templates to begin with.
 */
package org.straddle.kit.table;
