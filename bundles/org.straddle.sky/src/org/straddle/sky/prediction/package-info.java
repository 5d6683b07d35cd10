/**
 * What others ask of the sky: where a bird is and when it passes, over one place or many ({@link
 * org.straddle.sky.prediction.Ephemeris}, {@link org.straddle.sky.prediction.PassSearch}), whom a pass reaches, when the
 * sun is up, how wrong a prediction may be. Angles are degrees and instants UTC.
 */
package org.straddle.sky.prediction;
