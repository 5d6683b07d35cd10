/**
 * Forecasts hour by hour, in a plain table of our own: lines {@code # latitude:}, {@code # longitude:}, {@code # source:} and
 * {@code # issued:}, then a heading and a row for each hour. Every heading names its unit, so that no figure is taken for another.
 */
package org.straddle.exchange.weather;
