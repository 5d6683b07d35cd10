package org.straddle.ui.daysheet.layout;

import org.straddle.ui.daysheet.sheet.Light;

/** A stretch of light behind a lane. */
public record LightBox(Light light, Box box) {
}
