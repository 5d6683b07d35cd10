package org.straddle.daysheet.layout;

import org.straddle.atlas.scene.SiteSpot;
import org.straddle.check.Severity;
import org.straddle.daysheet.sheet.BirdMark;
import org.straddle.daysheet.sheet.Light;

/** A sample of a drawing in the legend. */
public sealed interface Swatch {

    record OfLight(Light.State state) implements Swatch {
    }

    record OfSite(SiteSpot.Kind kind) implements Swatch {
    }

    record OfBird(BirdMark bird) implements Swatch {
    }

    record OfSeverity(Severity severity) implements Swatch {
    }

    record OfDrive(boolean fits) implements Swatch {
    }

    record OfSpan() implements Swatch {
    }

    record OfPin() implements Swatch {
    }

    record OfFitting() implements Swatch {
    }

    /** A remark without a drawing. */
    record None() implements Swatch {
    }
}
