package org.straddle.sky;

/** How much of the sun a bird sees. Air and refraction at the Earth's edge are left out. */
public enum Illumination {
    /** The whole disc. */
    SUNLIT,
    /** Part of the disc: the Earth covers some of it. */
    PENUMBRA,
    /** None of it. */
    UMBRA
}
