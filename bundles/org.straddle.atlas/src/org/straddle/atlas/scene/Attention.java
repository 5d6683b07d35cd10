package org.straddle.atlas.scene;

/** How grave the gravest thing is that the checks found about a place. */
public enum Attention {
    NONE, ADVICE, WARNING, BLOCKER
}
