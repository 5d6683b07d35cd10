package org.straddle.store;

import java.nio.file.Path;

import org.straddle.model.Fresh;
import org.straddle.model.Site;

/** Changes an event and saves it on a disk whose power fails on the way: what was not forced to the disk is lost by chance. */
public final class BrokenSave {

    /** What the save would change, so that somebody can tell whether it counts. */
    public static final String NEW_SITE = "Broken save";

    private BrokenSave() {
    }

    /**
     * @param step at which power fails
     * @return whether the save was done before that step
     */
    public static boolean of(Path event, int step, long seed) throws EventFolderException {
        try (EventFolder folder = EventFolder.open(event, FailingSteps.powerFailsAt(step, seed))) {
            Site site = Fresh.site();
            site.setName(NEW_SITE);
            site.setLatitudeDeg(64.5);
            site.setLongitudeDeg(-20.5);
            folder.event().getSites().forEach(each -> each.setAltitudeM(1.0 + step));
            folder.event().getSites().add(site);
            folder.addElementsFile("unused.tle", new byte[] {1});
            folder.save();
            return true;
        } catch (FailingSteps.PowerFailure e) {
            return false;
        }
    }
}
