package org.straddle.atlas.picture;

import java.util.ArrayList;
import java.util.List;

import org.eclipse.core.runtime.IProgressMonitor;
import org.eclipse.core.runtime.OperationCanceledException;
import org.straddle.drawing.Lettering;
import org.straddle.drawing.Mark;
import org.straddle.drawing.Pen;

/**
 * A map as a list of instructions for one sight. It is made on any thread, which takes the most of the work: choosing
 * what is in sight and how finely, cutting it, and finding room for names. Carrying it out needs only a {@link Pen}, and
 * may pause between two instructions.
 */
public record MapPicture(Sight sight, List<Mark> marks) {

    public MapPicture {
        marks = List.copyOf(marks);
    }

    /**
     * @param monitor may be null
     * @throws OperationCanceledException soon after the monitor was cancelled
     */
    public static MapPicture of(MapContents contents, Sight sight, Shown shown, Lettering lettering,
            IProgressMonitor monitor) {
        Tracing tracing = new Tracing(sight);
        Crowd crowd = new Crowd();
        List<Mark> marks = new ArrayList<>(GroundPainter.paint(tracing, contents.projector(),
                contents.baseMap().filter(map -> shown.shows(Part.BASE_MAP)), monitor));
        stopIfCancelled(monitor);
        // Names take room in order of weight, and are drawn over everything that has none.
        SitePainter sites = new SitePainter(tracing, contents.scene(), shown, crowd, lettering);
        PlacePainter places = new PlacePainter(tracing, contents.places(), shown, crowd);
        sites.takeRoom();
        places.takeRoom();
        List<Mark> siteMarks = sites.paint();
        List<Mark> ranks = places.ranks(lettering);
        List<Mark> numbers = shown.shows(Part.DEMAND)
                ? DemandPainter.numbers(tracing, contents.scene().demand(), crowd, lettering) : List.of();
        stopIfCancelled(monitor);
        List<Mark> drives = shown.shows(Part.DRIVES) ? DrivePainter.paint(tracing, contents.scene().drives(), shown, crowd)
                : List.of();
        RegionPainter regions = new RegionPainter(tracing, contents.scene().regions(), shown);
        List<Mark> regionNames = regions.names(crowd, lettering);
        GridPainter grid = new GridPainter(tracing, contents, shown);
        List<Mark> gridNames = grid.names(crowd, lettering);
        stopIfCancelled(monitor);
        marks.addAll(LayerPainter.paint(tracing, contents.layers(), shown, crowd, lettering, monitor));
        stopIfCancelled(monitor);
        if (shown.shows(Part.DEMAND)) {
            marks.addAll(DemandPainter.hatches(tracing, contents.scene().demand()));
        }
        marks.addAll(regions.lines());
        contents.reach().filter(reach -> shown.shows(Part.REACH))
                .ifPresent(reach -> marks.addAll(ReachPainter.paint(tracing, reach)));
        marks.addAll(grid.lines());
        marks.addAll(gridNames);
        marks.addAll(regionNames);
        marks.addAll(numbers);
        marks.addAll(drives);
        marks.addAll(places.marks());
        marks.addAll(ranks);
        marks.addAll(siteMarks);
        return new MapPicture(sight, marks);
    }

    public void draw(Pen pen) {
        marks.forEach(mark -> mark.draw(pen));
    }

    private static void stopIfCancelled(IProgressMonitor monitor) {
        if (monitor != null && monitor.isCanceled()) {
            throw new OperationCanceledException();
        }
    }
}
