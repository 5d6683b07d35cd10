package org.straddle.store;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.security.GeneralSecurityException;
import java.security.MessageDigest;
import java.security.SecureRandom;
import java.util.HexFormat;

import javax.crypto.Mac;
import javax.crypto.spec.SecretKeySpec;

import org.straddle.words.Catalogue;

/**
 * Tells the interrupted saves of this user from those that came with a folder: the list of a save is sealed with a key
 * that lies in the user's own folder and nowhere in an event (HMAC-SHA256, RFC 2104). Where no key can be kept, the
 * seal names the place of the folder on its disk instead, which no archive can carry over.
 */
final class SaveSeal {

    private static final Catalogue TEXTS = Catalogue.of(SaveSeal.class);

    private static final String KEY_FILE = "save-key";
    private static final int KEY_BYTES = 32;
    /** Stand in the file, whatever the language. */
    private static final String BY_KEY = "key" + ' ';
    private static final String BY_PLACE = "place" + ' ';

    private SaveSeal() {
    }

    /** @param folder that the list will lie in */
    static String of(String list, Path folder) {
        byte[] key = key(UserFolder.path());
        return key == null ? BY_PLACE + place(folder) : BY_KEY + code(key, list);
    }

    /** Did {@link #of} make this seal for the list, for this user or in this very folder? */
    static boolean fits(String seal, String list, Path folder) {
        byte[] key = seal.startsWith(BY_KEY) ? key(UserFolder.path()) : null;
        String right = key == null ? BY_PLACE + place(folder) : BY_KEY + code(key, list);
        return MessageDigest.isEqual(right.getBytes(StandardCharsets.UTF_8), seal.getBytes(StandardCharsets.UTF_8));
    }

    private static String code(byte[] key, String list) {
        try {
            Mac mac = Mac.getInstance("HmacSHA256");
            mac.init(new SecretKeySpec(key, "HmacSHA256"));
            return HexFormat.of().formatHex(mac.doFinal(list.getBytes(StandardCharsets.UTF_8)));
        } catch (GeneralSecurityException e) {
            throw new IllegalStateException(TEXTS.text("saveSeal.everyJavaRuntime"), e);
        }
    }

    /** The number of the folder on its disk, with the time at which it was made where the system keeps no numbers. */
    private static String place(Path folder) {
        try {
            Object number = Files.getFileStore(folder).supportsFileAttributeView("unix")
                    || Files.getFileStore(folder).supportsFileAttributeView("posix")
                            ? Files.getAttribute(folder, "unix:ino") : Files.getAttribute(folder, "creationTime");
            return String.valueOf(number);
        } catch (IOException | IllegalArgumentException | UnsupportedOperationException e) {
            return "unknown";
        }
    }

    /** The user's key, made when there is none yet; null when none can be kept. */
    private static synchronized byte[] key(Path folder) {
        Path file = folder.resolve(KEY_FILE);
        try {
            if (!Files.exists(file)) {
                Files.createDirectories(folder);
                Path fresh = Files.createTempFile(folder, KEY_FILE, null);
                byte[] bytes = new byte[KEY_BYTES];
                new SecureRandom().nextBytes(bytes);
                Files.write(fresh, bytes, StandardOpenOption.SYNC);
                try {
                    Files.createLink(file, fresh);
                } catch (FileAlreadyExistsException e) {
                    // Another program of the user was faster: its key counts.
                } finally {
                    Files.deleteIfExists(fresh);
                }
            }
            byte[] key = Files.readAllBytes(file);
            return key.length == KEY_BYTES ? key : null;
        } catch (IOException | UnsupportedOperationException | SecurityException e) {
            return null;
        }
    }
}
