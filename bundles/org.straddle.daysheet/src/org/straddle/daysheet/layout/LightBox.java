package org.straddle.daysheet.layout;

import org.straddle.daysheet.sheet.Light;

/** A stretch of light behind a lane. */
public record LightBox(Light light, Box box) {
}
