package org.straddle.packaging;

import java.io.ByteArrayOutputStream;
import java.io.DataOutputStream;
import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.Map;

/** The program's icon in the files that Windows and macOS want; both formats take PNG pictures as they are. */
final class Icons {

    /** Edge in pixels, and the type by which an ICNS file names a PNG of that size. */
    private static final Map<Integer, String> TYPES = new LinkedHashMap<>();

    static {
        TYPES.put(16, "icp4");
        TYPES.put(32, "icp5");
        TYPES.put(64, "icp6");
        TYPES.put(128, "ic07");
        TYPES.put(256, "ic08");
    }

    private final Path folder;

    Icons(Path folder) {
        this.folder = folder;
    }

    Path png(int edge) {
        return folder.resolve("straddle" + edge + ".png");
    }

    /** "icns", the length of all, then type, length and content of each; numbers are big-endian. */
    byte[] icns() throws IOException {
        ByteArrayOutputStream pictures = new ByteArrayOutputStream();
        DataOutputStream out = new DataOutputStream(pictures);
        for (Map.Entry<Integer, String> each : TYPES.entrySet()) {
            byte[] png = Files.readAllBytes(png(each.getKey()));
            out.writeBytes(each.getValue());
            out.writeInt(png.length + 8);
            out.write(png);
        }
        ByteArrayOutputStream whole = new ByteArrayOutputStream();
        out = new DataOutputStream(whole);
        out.writeBytes("icns");
        out.writeInt(pictures.size() + 8);
        out.write(pictures.toByteArray());
        return whole.toByteArray();
    }

    /** A head, a line of 16 bytes for each picture, then the pictures; numbers are little-endian, an edge of 256 is 0. */
    byte[] ico() throws IOException {
        int[] edges = {16, 24, 32, 48, 64, 256};
        ByteArrayOutputStream pictures = new ByteArrayOutputStream();
        ByteBuffer head = ByteBuffer.allocate(6 + 16 * edges.length).order(ByteOrder.LITTLE_ENDIAN);
        head.putShort((short) 0).putShort((short) 1).putShort((short) edges.length);
        for (int edge : edges) {
            byte[] png = Files.readAllBytes(png(edge));
            head.put((byte) edge).put((byte) edge).put((byte) 0).put((byte) 0).putShort((short) 1).putShort((short) 32)
                    .putInt(png.length).putInt(head.capacity() + pictures.size());
            pictures.writeBytes(png);
        }
        ByteArrayOutputStream whole = new ByteArrayOutputStream();
        whole.writeBytes(head.array());
        whole.writeBytes(pictures.toByteArray());
        return whole.toByteArray();
    }
}
