package org.straddle.visit;

import java.io.ByteArrayOutputStream;
import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/** Puts Exif data (CIPA DC-008) into a JPEG picture, apart from the library that reads it. */
public final class TinyExif {

    private record Entry(int tag, int type, int count, byte[] value) {
    }

    private final List<Entry> exif = new ArrayList<>();
    private final List<Entry> gps = new ArrayList<>();

    public TinyExif position(int d, int m, int s, char ns, int e, int f, int g, char ew) {
        gps.add(text(1, String.valueOf(ns)));
        gps.add(rationals(2, d, 1, m, 1, s, 1));
        gps.add(text(3, String.valueOf(ew)));
        gps.add(rationals(4, e, 1, f, 1, g, 1));
        return this;
    }

    public TinyExif direction(char reference, int hundredths) {
        gps.add(text(16, String.valueOf(reference)));
        gps.add(rationals(17, hundredths, 100));
        return this;
    }

    public TinyExif gpsTime(String date, int hour, int minute, int second) {
        gps.add(rationals(7, hour, 1, minute, 1, second, 1));
        gps.add(text(29, date));
        return this;
    }

    public TinyExif datum(String name) {
        gps.add(text(18, name));
        return this;
    }

    public TinyExif local(String time) {
        exif.add(text(0x9003, time));
        return this;
    }

    public TinyExif offset(String zone) {
        exif.add(text(0x9011, zone));
        return this;
    }

    /** The picture with an APP1 segment after its start. */
    public byte[] into(byte[] jpeg) {
        int exifAt = 8 + 2 + 2 * 12 + 4;
        byte[] exifPart = directory(exif, exifAt);
        int gpsAt = exifAt + exifPart.length;
        byte[] gpsPart = directory(gps, gpsAt);
        ByteBuffer tiff = ByteBuffer.allocate(gpsAt + gpsPart.length).order(ByteOrder.LITTLE_ENDIAN);
        tiff.put((byte) 'I').put((byte) 'I').putShort((short) 42).putInt(8).putShort((short) 2);
        tiff.putShort((short) 0x8769).putShort((short) 4).putInt(1).putInt(exifAt);
        tiff.putShort((short) 0x8825).putShort((short) 4).putInt(1).putInt(gpsAt);
        tiff.putInt(0).put(exifPart).put(gpsPart);
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        out.write(jpeg, 0, 2);
        int length = 2 + 6 + tiff.capacity();
        out.writeBytes(new byte[] {(byte) 0xFF, (byte) 0xE1, (byte) (length >> 8), (byte) length, 'E', 'x', 'i', 'f', 0, 0});
        out.writeBytes(tiff.array());
        out.write(jpeg, 2, jpeg.length - 2);
        return out.toByteArray();
    }

    private static byte[] directory(List<Entry> entries, int at) {
        entries.sort(Comparator.comparingInt(Entry::tag));
        int beside = at + 2 + 12 * entries.size() + 4;
        int extra = entries.stream().mapToInt(entry -> entry.value.length > 4 ? entry.value.length : 0).sum();
        ByteBuffer out = ByteBuffer.allocate(beside - at + extra).order(ByteOrder.LITTLE_ENDIAN).putShort((short) entries.size());
        ByteArrayOutputStream values = new ByteArrayOutputStream();
        for (Entry entry : entries) {
            out.putShort((short) entry.tag).putShort((short) entry.type).putInt(entry.count);
            if (entry.value.length > 4) {
                out.putInt(beside + values.size());
                values.writeBytes(entry.value);
            } else {
                out.put(java.util.Arrays.copyOf(entry.value, 4));
            }
        }
        return out.putInt(0).put(values.toByteArray()).array();
    }

    private static Entry text(int tag, String text) {
        byte[] bytes = (text + "\0").getBytes(StandardCharsets.US_ASCII);
        return new Entry(tag, 2, bytes.length, bytes);
    }

    private static Entry rationals(int tag, int... values) {
        ByteBuffer bytes = ByteBuffer.allocate(4 * values.length).order(ByteOrder.LITTLE_ENDIAN);
        for (int value : values) {
            bytes.putInt(value);
        }
        return new Entry(tag, 5, values.length / 2, bytes.array());
    }
}
