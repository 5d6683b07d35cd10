package org.straddle.cli;

import java.io.ByteArrayOutputStream;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.List;
import java.util.Random;

/** Spoils bytes: cut off, cut out, said twice, swapped, flipped, or with something put in that readers trip over. */
final class Mutator {

    private static final List<String> STUMBLING = List.of("\0", "\u001B[2J", "\u009B", "\u202E", "\uFEFF", "\n", "\r", "\"", "'", "<", ">", "&", "&#0;", "]]>",
            "<!DOCTYPE x [<!ENTITY a \"b\">]>", "{", "}", "[", ",", ";", "=1+1", "NaN", "1e999", "-1", "0", "999999999999999999999", "1e-320",
            "2147483648", "../../x", " ".repeat(5000), "[".repeat(3000), "\uD83D\uDE00", "٣");

    private Mutator() {
    }

    static byte[] spoil(byte[] good, Random random) {
        byte[] bad = good.clone();
        for (int times = 1 + random.nextInt(3); times > 0 && bad.length > 1; times--) {
            int at = random.nextInt(bad.length);
            int until = Math.min(bad.length, at + 1 + random.nextInt(random.nextBoolean() ? 8 : 400));
            bad = switch (random.nextInt(7)) {
                case 0 -> Arrays.copyOf(bad, at);
                case 1 -> joined(bad, 0, at, new byte[0], until);
                case 2 -> joined(bad, 0, until, new byte[0], at);
                case 3 -> flipped(bad, at, random);
                case 4 -> joined(bad, 0, at, new byte[] {(byte) random.nextInt(256)}, at);
                case 5 -> joined(bad, 0, at, Bench.one(STUMBLING, random).getBytes(StandardCharsets.UTF_8), until);
                default -> joined(bad, 0, at, Bench.one(STUMBLING, random).getBytes(StandardCharsets.UTF_8), at);
            };
        }
        return bad;
    }

    private static byte[] flipped(byte[] bytes, int at, Random random) {
        bytes[at] ^= (byte) (1 << random.nextInt(8));
        return bytes;
    }

    private static byte[] joined(byte[] bytes, int from, int until, byte[] between, int again) {
        ByteArrayOutputStream all = new ByteArrayOutputStream();
        all.write(bytes, from, until - from);
        all.writeBytes(between);
        all.write(bytes, again, bytes.length - again);
        return all.toByteArray();
    }
}
