package org.straddle.workbench;

import java.io.ByteArrayInputStream;
import java.io.DataInputStream;
import java.io.IOException;
import java.net.InetSocketAddress;
import java.net.SocketAddress;
import java.net.UnixDomainSocketAddress;
import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.nio.channels.SocketChannel;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;

import org.eclipse.swt.graphics.Point;

/**
 * The pointer of the display, moved and pressed as a hand does it, through the XTEST extension of the X server: what the toolkit
 * posts by itself starts no drag. Layout of the requests: X Window System Protocol, X11 release 7; X11 XTEST Protocol 2.2.
 * Not to be called on the UI thread.
 */
final class Mouse implements AutoCloseable {

    /** Pointer and toolkit talk through the display: a hand that is faster than that drags nothing. */
    private static final long PAUSE_MS = 80;
    private static final int STEPS = 12;

    private static final int FIRST_PORT = 6000;
    private static final int QUERY_EXTENSION = 98;
    private static final int FAKE_INPUT = 2;
    private static final int PRESS = 4;
    private static final int RELEASE = 5;
    private static final int MOTION = 6;
    private static final int LEFT_BUTTON = 1;
    private static final int REPLY_BYTES = 32;
    private static final String COOKIE = "MIT-MAGIC-COOKIE-1";

    private final SocketChannel server;
    private final byte extension;

    private Mouse(SocketChannel server, String number) throws IOException {
        this.server = server;
        byte[] cookie = cookie(number);
        String name = cookie.length == 0 ? "" : COOKIE;
        send(bytes(12 + padded(name.length()) + padded(cookie.length)).put((byte) 'l').put((byte) 0).putShort((short) 11).putShort((short) 0)
                .putShort((short) name.length()).putShort((short) cookie.length).putShort((short) 0)
                .put(Arrays.copyOf(name.getBytes(StandardCharsets.US_ASCII), padded(name.length()))).put(cookie));
        ByteBuffer answer = read(8);
        if (answer.get(0) != 1) {
            throw new IOException("the display lets nobody in");
        }
        read(4 * Short.toUnsignedInt(answer.getShort(6)));
        send(bytes(16).put((byte) QUERY_EXTENSION).put((byte) 0).putShort((short) 4).putShort((short) 5).putShort((short) 0)
                .put("XTEST".getBytes(StandardCharsets.US_ASCII)));
        answer = read(REPLY_BYTES);
        if (answer.get(8) == 0) {
            throw new IOException("the display has no XTEST");
        }
        extension = answer.get(9);
    }

    /** Of the display in the environment, {@code [host]:number[.screen]}. */
    static Mouse ofTheDisplay() throws IOException {
        String display = System.getenv("DISPLAY");
        String host = display.substring(0, display.indexOf(':'));
        String number = display.substring(display.indexOf(':') + 1).replaceFirst("\\..*", "");
        SocketAddress address = host.isEmpty() ? UnixDomainSocketAddress.of("/tmp/.X11-unix/X" + number)
                : new InetSocketAddress(host, FIRST_PORT + Integer.parseInt(number));
        return new Mouse(SocketChannel.open(address), number);
    }

    /** What the server asks for; nothing where it asks nothing. The file: libXau, Xau.h. */
    private static byte[] cookie(String number) throws IOException {
        String file = System.getenv("XAUTHORITY");
        Path path = file == null ? Path.of(System.getProperty("user.home"), ".Xauthority") : Path.of(file);
        if (!Files.exists(path)) {
            return new byte[0];
        }
        try (DataInputStream in = new DataInputStream(new ByteArrayInputStream(Files.readAllBytes(path)))) {
            while (in.available() > 0) {
                in.readShort();
                field(in);
                String of = new String(field(in), StandardCharsets.US_ASCII);
                String name = new String(field(in), StandardCharsets.US_ASCII);
                byte[] data = field(in);
                if (name.equals(COOKIE) && (of.isEmpty() || of.equals(number))) {
                    return data;
                }
            }
        }
        return new byte[0];
    }

    private static byte[] field(DataInputStream in) throws IOException {
        return in.readNBytes(in.readUnsignedShort());
    }

    /** Presses at one place of the display, moves in steps, and lets go at the other. */
    void drag(Point from, Point to) throws IOException {
        fake(MOTION, 0, from);
        fake(PRESS, LEFT_BUTTON, from);
        for (int step = 1; step <= STEPS; step++) {
            fake(MOTION, 0, new Point(from.x + (to.x - from.x) * step / STEPS, from.y + (to.y - from.y) * step / STEPS));
        }
        fake(MOTION, 0, new Point(to.x + 1, to.y));
        fake(MOTION, 0, to);
        fake(RELEASE, LEFT_BUTTON, to);
    }

    private void fake(int type, int detail, Point at) throws IOException {
        send(bytes(36).put(extension).put((byte) FAKE_INPUT).putShort((short) 9).put((byte) type).put((byte) detail).putShort((short) 0)
                .putInt(0).putInt(0).putLong(0).putShort((short) at.x).putShort((short) at.y));
        try {
            Thread.sleep(PAUSE_MS);
        } catch (InterruptedException e) {
            throw new AssertionError(e);
        }
    }

    private static int padded(int length) {
        return (length + 3) / 4 * 4;
    }

    private static ByteBuffer bytes(int length) {
        return ByteBuffer.allocate(length).order(ByteOrder.LITTLE_ENDIAN);
    }

    private void send(ByteBuffer request) throws IOException {
        request.clear();
        while (request.hasRemaining()) {
            server.write(request);
        }
    }

    private ByteBuffer read(int length) throws IOException {
        ByteBuffer answer = bytes(length);
        while (answer.hasRemaining()) {
            if (server.read(answer) < 0) {
                throw new IOException("the display hung up");
            }
        }
        return answer;
    }

    @Override
    public void close() throws IOException {
        server.close();
    }
}
