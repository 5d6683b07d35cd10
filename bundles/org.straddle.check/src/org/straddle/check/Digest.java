package org.straddle.check;

import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HexFormat;

/** A short fingerprint of facts, stable from run to run. */
final class Digest {

    /** 64 bits: enough to tell one state of a finding from the next, short enough to store beside it. */
    private static final int BYTES = 8;

    private Digest() {
    }

    static String of(String sentence, Object... more) {
        try {
            MessageDigest digest = MessageDigest.getInstance("SHA-256");
            digest.update(sentence.getBytes(StandardCharsets.UTF_8));
            for (Object fact : more) {
                digest.update((byte) 0);
                digest.update(String.valueOf(fact).getBytes(StandardCharsets.UTF_8));
            }
            return HexFormat.of().formatHex(digest.digest(), 0, BYTES);
        } catch (NoSuchAlgorithmException e) {
            throw new IllegalStateException("every Java runtime has SHA-256", e);
        }
    }
}
