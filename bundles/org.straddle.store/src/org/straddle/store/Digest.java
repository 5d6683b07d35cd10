package org.straddle.store;

import java.io.IOException;
import java.io.InputStream;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HexFormat;

import org.straddle.words.Catalogue;

/** SHA-256 in hexadecimal: tells whether two contents are the same. */
final class Digest {

    private static final Catalogue TEXTS = Catalogue.of(Digest.class);

    private Digest() {
    }

    static String of(byte[] bytes) {
        return HexFormat.of().formatHex(sha256().digest(bytes));
    }

    /** Of all that is still to be read. */
    static String of(InputStream in) throws IOException {
        MessageDigest digest = sha256();
        byte[] block = new byte[1 << 16];
        for (int read = in.read(block); read >= 0; read = in.read(block)) {
            digest.update(block, 0, read);
        }
        return HexFormat.of().formatHex(digest.digest());
    }

    private static MessageDigest sha256() {
        try {
            return MessageDigest.getInstance("SHA-256");
        } catch (NoSuchAlgorithmException e) {
            throw new IllegalStateException(TEXTS.text("digest.everyJavaRuntime"), e);
        }
    }
}
