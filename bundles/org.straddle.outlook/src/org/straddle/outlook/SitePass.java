package org.straddle.outlook;

import org.straddle.model.Bird;
import org.straddle.model.Site;
import org.straddle.sky.Pass;

/** A bird of the event above the horizon mask of one of its sites. */
public record SitePass(Site site, Bird bird, Pass pass) {
}
