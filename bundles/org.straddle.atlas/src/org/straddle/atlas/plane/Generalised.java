package org.straddle.atlas.plane;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

import org.eclipse.core.runtime.IProgressMonitor;
import org.eclipse.core.runtime.OperationCanceledException;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.index.strtree.STRtree;

/**
 * Outlines at several degrees of detail, each with a search tree, so that a frame touches only what is in sight and
 * only as finely as it can be seen. A degree is made when it is first asked for, from the next finer one, by the
 * method of Douglas and Peucker (1973), without recursion: a zigzag of 30 000 positions overflows the stack of the one
 * in JTS.
 *
 * <p>Safe for use by many threads.
 */
public final class Generalised {

    /** Tolerance of the finest degree below the full one, metres; each further one is twice as coarse. */
    private static final double FINEST_M = 25;
    private static final int COARSENING = 2;
    private static final int DEGREES = 14;
    /** How far a line may lie beside its true place, pixels. */
    private static final double SEEN_PX = 0.5;

    private final Degree[] degrees = new Degree[DEGREES];

    private record Degree(List<Outline> outlines, STRtree tree) {

        static Degree of(List<Outline> outlines) {
            STRtree tree = new STRtree();
            for (Outline outline : outlines) {
                Envelope box = outline.box();
                if (!box.isNull()) {
                    tree.insert(box, outline);
                }
            }
            tree.build();
            return new Degree(outlines, tree);
        }
    }

    public Generalised(List<Outline> outlines) {
        degrees[0] = Degree.of(outlines);
    }

    public List<Outline> full() {
        return degrees[0].outlines;
    }

    /** Number of positions of the full degree. */
    public int size() {
        return full().stream().mapToInt(Outline::size).sum();
    }

    public Envelope box() {
        Envelope box = new Envelope();
        full().forEach(outline -> box.expandToInclude(outline.box()));
        return box;
    }

    /**
     * What lies in a box, as fine as a scale shows it.
     *
     * @param metresPerPx of the plane
     * @param monitor may be null
     */
    @SuppressWarnings("unchecked")
    public List<Outline> in(Envelope box, double metresPerPx, IProgressMonitor monitor) {
        return (List<Outline>) degree(metresPerPx, monitor).tree.query(box);
    }

    private synchronized Degree degree(double metresPerPx, IProgressMonitor monitor) {
        int wanted = 0;
        while (wanted + 1 < DEGREES && tolerance(wanted + 1) <= SEEN_PX * metresPerPx) {
            wanted++;
        }
        int known = wanted;
        while (degrees[known] == null) {
            known--;
        }
        for (; known < wanted; known++) {
            List<Outline> coarser = new ArrayList<>();
            for (Outline outline : degrees[known].outlines) {
                if (monitor != null && monitor.isCanceled()) {
                    throw new OperationCanceledException();
                }
                coarser(outline, tolerance(known + 1), coarser);
            }
            degrees[known + 1] = Degree.of(coarser);
        }
        return degrees[wanted];
    }

    private static double tolerance(int degree) {
        return degree == 0 ? 0 : FINEST_M * Math.pow(COARSENING, degree - 1);
    }

    /** What is smaller than the tolerance is not to be seen and drops out, but points stay. */
    private static void coarser(Outline outline, double toleranceM, List<Outline> into) {
        if (outline.kind() == Outline.Kind.POINTS) {
            into.add(outline);
            return;
        }
        List<double[]> parts = new ArrayList<>();
        for (double[] part : outline.parts()) {
            double[] simple = simplified(part, toleranceM);
            if (outline.kind() == Outline.Kind.LINES || simple.length >= 8) {
                parts.add(simple);
            }
        }
        if (!parts.isEmpty()) {
            Outline simple = new Outline(outline.kind(), parts, outline.name());
            Envelope box = simple.box();
            if (Math.max(box.getWidth(), box.getHeight()) >= toleranceM) {
                into.add(simple);
            }
        }
    }

    static double[] simplified(double[] line, double toleranceM) {
        int last = line.length / 2 - 1;
        if (last < 2) {
            return line;
        }
        boolean[] keep = new boolean[last + 1];
        keep[0] = true;
        keep[last] = true;
        int[] open = new int[64];
        int depth = 0;
        open[depth++] = 0;
        open[depth++] = last;
        int kept = 2;
        while (depth > 0) {
            int to = open[--depth];
            int from = open[--depth];
            int farthest = farthest(line, from, to, toleranceM);
            if (farthest > 0) {
                keep[farthest] = true;
                kept++;
                if (depth + 4 > open.length) {
                    open = Arrays.copyOf(open, 2 * open.length);
                }
                open[depth++] = from;
                open[depth++] = farthest;
                open[depth++] = farthest;
                open[depth++] = to;
            }
        }
        double[] simple = new double[2 * kept];
        for (int i = 0, at = 0; i <= last; i++) {
            if (keep[i]) {
                simple[at++] = line[2 * i];
                simple[at++] = line[2 * i + 1];
            }
        }
        return simple;
    }

    /** The position that lies farthest beside the edge, if farther than the tolerance; else -1. */
    private static int farthest(double[] line, int from, int to, double toleranceM) {
        double ax = line[2 * from];
        double ay = line[2 * from + 1];
        double dx = line[2 * to] - ax;
        double dy = line[2 * to + 1] - ay;
        double length = dx * dx + dy * dy;
        double most = toleranceM * toleranceM;
        int farthest = -1;
        for (int i = from + 1; i < to; i++) {
            double px = line[2 * i] - ax;
            double py = line[2 * i + 1] - ay;
            double along = length == 0 ? 0 : Math.max(0, Math.min(1, (px * dx + py * dy) / length));
            double ex = px - along * dx;
            double ey = py - along * dy;
            double apart = ex * ex + ey * ey;
            if (apart > most) {
                most = apart;
                farthest = i;
            }
        }
        return farthest;
    }
}
