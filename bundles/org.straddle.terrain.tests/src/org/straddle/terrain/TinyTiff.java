package org.straddle.terrain;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.function.DoubleBinaryOperator;

/**
 * Writes small GeoTIFF files by the published layout (TIFF 6.0; OGC 19-008r4 GeoTIFF 1.1), apart from the library that
 * reads them: one strip of 32-bit floats, north up.
 */
public final class TinyTiff {

    private static final int GEOGRAPHIC = 2;
    private static final int PROJECTED = 1;

    private final int width;
    private final int height;
    private final double west;
    private final double north;
    private final double cell;
    private int epsg;
    private boolean geographic;
    private int bands = 1;
    private DoubleBinaryOperator metres = (x, y) -> 0;

    /** @param west of the outer edge of the first cell */
    public TinyTiff(int width, int height, double west, double north, double cell) {
        this.width = width;
        this.height = height;
        this.west = west;
        this.north = north;
        this.cell = cell;
    }

    /** As a function of x and y of the middle of a cell. */
    public TinyTiff heights(DoubleBinaryOperator of) {
        metres = of;
        return this;
    }

    public TinyTiff wgs84() {
        epsg = 4326;
        geographic = true;
        return this;
    }

    public TinyTiff projected(int code) {
        epsg = code;
        geographic = false;
        return this;
    }

    public TinyTiff bands(int number) {
        bands = number;
        return this;
    }

    public Path write(Path file) throws IOException {
        return Files.write(file, bytes());
    }

    public byte[] bytes() {
        ByteBuffer pixels = ByteBuffer.allocate(4 * width * height * bands).order(ByteOrder.LITTLE_ENDIAN);
        for (int row = 0; row < height; row++) {
            for (int column = 0; column < width; column++) {
                for (int band = 0; band < bands; band++) {
                    pixels.putFloat((float) metres.applyAsDouble(west + (column + 0.5) * cell, north - (row + 0.5) * cell));
                }
            }
        }
        List<Entry> entries = new ArrayList<>(List.of(longs(256, width), longs(257, height),
                shorts(258, repeat(32)), shorts(259, 1), shorts(262, 1), longs(273, 8), shorts(277, bands),
                longs(278, height), longs(279, pixels.capacity()), shorts(284, 1), shorts(339, repeat(3)),
                doubles(33550, cell, cell, 0), doubles(33922, 0, 0, 0, west, north, 0)));
        if (epsg > 0) {
            entries.add(shorts(34735, 1, 1, 0, 3, 1024, 0, 1, geographic ? GEOGRAPHIC : PROJECTED, 1025, 0, 1, 1,
                    geographic ? 2048 : 3072, 0, 1, epsg));
        }
        entries.add(new Entry(42113, 2, 6, "-9999\0".getBytes(StandardCharsets.US_ASCII)));
        entries.sort((a, b) -> Integer.compare(a.tag, b.tag));
        int directory = 8 + pixels.capacity();
        int beside = directory + 2 + 12 * entries.size() + 4;
        int extra = entries.stream().mapToInt(entry -> entry.value.length > 4 ? entry.value.length + 1 & ~1 : 0).sum();
        ByteBuffer out = ByteBuffer.allocate(beside + extra).order(ByteOrder.LITTLE_ENDIAN);
        out.put((byte) 'I').put((byte) 'I').putShort((short) 42).putInt(directory).put(pixels.array());
        out.putShort((short) entries.size());
        for (Entry entry : entries) {
            out.putShort((short) entry.tag).putShort((short) entry.type).putInt(entry.count);
            if (entry.value.length > 4) {
                out.putInt(beside);
                out.duplicate().position(beside).put(entry.value);
                beside += entry.value.length + 1 & ~1;
            } else {
                out.put(java.util.Arrays.copyOf(entry.value, 4));
            }
        }
        out.putInt(0);
        return out.array();
    }

    private int[] repeat(int value) {
        int[] all = new int[bands];
        java.util.Arrays.fill(all, value);
        return all;
    }

    private record Entry(int tag, int type, int count, byte[] value) {
    }

    private static Entry shorts(int tag, int... values) {
        ByteBuffer bytes = ByteBuffer.allocate(2 * values.length).order(ByteOrder.LITTLE_ENDIAN);
        for (int value : values) {
            bytes.putShort((short) value);
        }
        return new Entry(tag, 3, values.length, bytes.array());
    }

    private static Entry longs(int tag, int value) {
        return new Entry(tag, 4, 1, ByteBuffer.allocate(4).order(ByteOrder.LITTLE_ENDIAN).putInt(value).array());
    }

    private static Entry doubles(int tag, double... values) {
        ByteBuffer bytes = ByteBuffer.allocate(8 * values.length).order(ByteOrder.LITTLE_ENDIAN);
        for (double value : values) {
            bytes.putDouble(value);
        }
        return new Entry(tag, 12, values.length, bytes.array());
    }
}
