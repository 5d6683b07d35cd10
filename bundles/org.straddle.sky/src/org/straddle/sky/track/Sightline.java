package org.straddle.sky.track;

import org.straddle.sky.Look;
import org.straddle.sky.Place;

/**
 * The view from one place along one track: angles and distances to the bird. Holds scratch space, so
 * one per thread; angles in radians.
 *
 * <p>A cubic stays a cubic when it is moved and turned: each step of the track is turned once into
 * the place's own east, north and up, and every trial time in it then costs three polynomials.
 */
public final class Sightline {

    private final Track track;
    private final double[] site;
    private final double[] east;
    private final double[] north;
    private final double[] up;
    /** One by the step, 1/s: divisions are slow. */
    private final double perStep;

    private int step = -1;
    private final double[] e = new double[4];
    private final double[] n = new double[4];
    private final double[] u = new double[4];
    /** Scratch. */
    private final double[] state = new double[6];
    /** Time since the step began, seconds. */
    private double s;
    private double de;
    private double dn;
    private double du;

    private double nodeHeight;
    private double nodeHeightRate;
    private double nodeRange;
    private double nodeRangeRate;

    /** @param track may be null for one that only looks {@link #toward} points */
    public Sightline(Place place, Track track) {
        this.track = track;
        LocalAxes axes = new LocalAxes(place);
        site = axes.site;
        east = axes.east;
        north = axes.north;
        up = axes.up;
        perStep = track == null ? 0 : 1 / track.stepS();
    }

    /** Looks along the track at a time; the other methods then speak of that time. */
    public Sightline at(double timeS) {
        return at(timeS, track.stepAt(timeS));
    }

    /** The same by a step of the track that holds the time or ends with it. */
    Sightline at(double timeS, int stepHolding) {
        if (stepHolding != step) {
            load(stepHolding);
        }
        s = timeS - step * track.stepS();
        de = value(e);
        dn = value(n);
        du = value(u);
        return this;
    }

    /** Looks at an Earth-fixed point, metres; there are no rates then. */
    public Sightline toward(double x, double y, double z) {
        double dx = x - site[0];
        double dy = y - site[1];
        double dz = z - site[2];
        de = along(east, dx, dy, dz);
        dn = along(north, dx, dy, dz);
        du = along(up, dx, dy, dz);
        return this;
    }

    /** Turns the cubic of a step, by powers of the seconds since it began, into the place's axes. */
    private void load(int i) {
        turn(i, east, e);
        turn(i, north, n);
        turn(i, up, u);
        step = i;
    }

    private void turn(int i, double[] axis, double[] cubic) {
        double[][] nodes = track.nodes();
        double p0 = along(axis, nodes[0][i] - site[0], nodes[1][i] - site[1], nodes[2][i] - site[2]);
        double p1 = along(axis, nodes[0][i + 1] - site[0], nodes[1][i + 1] - site[1], nodes[2][i + 1] - site[2]);
        double v0 = along(axis, nodes[3][i], nodes[4][i], nodes[5][i]);
        double v1 = along(axis, nodes[3][i + 1], nodes[4][i + 1], nodes[5][i + 1]);
        double mean = (p1 - p0) * perStep;
        cubic[0] = p0;
        cubic[1] = v0;
        cubic[2] = (3 * mean - 2 * v0 - v1) * perStep;
        cubic[3] = (v0 + v1 - 2 * mean) * perStep * perStep;
    }

    private static double along(double[] axis, double x, double y, double z) {
        return axis[0] * x + axis[1] * y + axis[2] * z;
    }

    private double value(double[] cubic) {
        return cubic[0] + s * (cubic[1] + s * (cubic[2] + s * cubic[3]));
    }

    private double rate(double[] cubic) {
        return cubic[1] + s * (2 * cubic[2] + s * 3 * cubic[3]);
    }

    /** Change of the rate. */
    private double bend(double[] cubic) {
        return 2 * cubic[2] + 6 * s * cubic[3];
    }

    public double elevation() {
        // atan2 keeps its precision near the zenith, where asin would not.
        return Math.atan2(du, Math.sqrt(de * de + dn * dn));
    }

    double elevationRate() {
        double level2 = de * de + dn * dn;
        double level = Math.sqrt(level2);
        double levelRate = (de * rate(e) + dn * rate(n)) / level;
        return (rate(u) * level - du * levelRate) / (level2 + du * du);
    }

    /** From north over east, 0 ≤ azimuth &lt; 2π. */
    public double azimuth() {
        return azimuth(de, dn);
    }

    private static double azimuth(double east, double north) {
        double azimuth = Math.atan2(east, north);
        return azimuth < 0 ? azimuth + 2 * Math.PI : azimuth;
    }

    double azimuthRate() {
        return (dn * rate(e) - de * rate(n)) / (de * de + dn * dn);
    }

    /** Metres off the upright plane through an azimuth, given by its sine and cosine, clockwise. */
    double aside(double sin, double cos) {
        return de * cos - dn * sin;
    }

    /** m/s. */
    double asideRate(double sin, double cos) {
        return rate(e) * cos - rate(n) * sin;
    }

    /** Metres. */
    public double range() {
        return Math.sqrt(de * de + dn * dn + du * du);
    }

    /** m/s, positive while receding. */
    double rangeRate() {
        return parting() / range();
    }

    /** Range times its rate, m²/s: of the same sign, and without a root. */
    double parting() {
        return de * rate(e) + dn * rate(n) + du * rate(u);
    }

    /** Change of {@link #parting} a second, m²/s². */
    double partingRate() {
        double ve = rate(e);
        double vn = rate(n);
        double vu = rate(u);
        return ve * ve + vn * vn + vu * vu + de * bend(e) + dn * bend(n) + du * bend(u);
    }

    /** Metres above the plane level at the place. */
    double height() {
        return du;
    }

    /** m/s upward. */
    double heightRate() {
        return rate(u);
    }

    /** Sine of the elevation: cheaper than the angle, and highest at the same time. */
    public double sinElevation() {
        return du / range();
    }

    /** Of the sign of the change of the elevation, and as smooth. */
    double rising() {
        return rate(u) * (de * de + dn * dn + du * du) - du * parting();
    }

    /** Change of {@link #rising} a second. */
    double risingRate() {
        return bend(u) * (de * de + dn * dn + du * du) + rate(u) * parting() - du * partingRate();
    }

    /** Azimuth of a node of the track; nothing else speaks of it. */
    double azimuthOfNode(int node) {
        double[][] nodes = track.nodes();
        double dx = nodes[0][node] - site[0];
        double dy = nodes[1][node] - site[1];
        double dz = nodes[2][node] - site[2];
        return azimuth(along(east, dx, dy, dz), along(north, dx, dy, dz));
    }

    /** Looks at a node of the track; the {@code node…} methods then speak of it, the others still of their time. */
    Sightline atNode(int node) {
        double[][] nodes = track.nodes();
        double dx = nodes[0][node] - site[0];
        double dy = nodes[1][node] - site[1];
        double dz = nodes[2][node] - site[2];
        double vx = nodes[3][node];
        double vy = nodes[4][node];
        double vz = nodes[5][node];
        nodeHeight = along(up, dx, dy, dz);
        nodeHeightRate = along(up, vx, vy, vz);
        nodeRange = Math.sqrt(dx * dx + dy * dy + dz * dz);
        nodeRangeRate = (dx * vx + dy * vy + dz * vz) / nodeRange;
        return this;
    }

    double nodeHeight() {
        return nodeHeight;
    }

    double nodeHeightRate() {
        return nodeHeightRate;
    }

    double nodeRange() {
        return nodeRange;
    }

    double nodeRangeRate() {
        return nodeRangeRate;
    }

    double nodeSinElevation() {
        return nodeHeight / nodeRange;
    }

    /**
     * The next node of the track that lies higher than a height over the level plane.
     *
     * @param from  first node to look at
     * @param until node to stop before
     * @return its number, or {@code until} when there is none
     */
    int nextNodeAbove(double heightM, int from, int until) {
        double[] x = track.nodes()[0];
        double[] y = track.nodes()[1];
        double[] z = track.nodes()[2];
        double ux = up[0];
        double uy = up[1];
        double uz = up[2];
        double level = heightM + along(up, site[0], site[1], site[2]);
        int i = from;
        while (i < until && x[i] * ux + y[i] * uy + z[i] * uz <= level) {
            i++;
        }
        return i;
    }

    /** How far the place is from the Earth's centre, metres. */
    double siteRadius() {
        return Math.sqrt(along(site, site[0], site[1], site[2]));
    }

    /** Whether the bird moves toward the north pole. */
    public boolean movesNorth() {
        track.state(step * track.stepS() + s, state);
        double r2 = state[0] * state[0] + state[1] * state[1] + state[2] * state[2];
        double radial = (state[0] * state[3] + state[1] * state[4] + state[2] * state[5]) / r2;
        return state[5] - radial * state[2] > 0;
    }

    public Look look() {
        double azimuthDeg = Math.toDegrees(azimuth());
        return new Look(azimuthDeg >= 360 ? 0 : azimuthDeg, Math.toDegrees(elevation()), range() / 1000,
                rangeRate() / 1000);
    }
}
