package org.straddle.check;

import java.lang.reflect.RecordComponent;
import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.Arrays;
import java.util.Collection;
import java.util.HexFormat;
import java.util.Optional;
import java.util.stream.Collectors;

import org.straddle.model.Identified;

/** A short fingerprint of facts, stable from run to run and from release to release: no name of a class is in it. */
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
                digest.update(plain(fact).getBytes(StandardCharsets.UTF_8));
            }
            return HexFormat.of().formatHex(digest.digest(), 0, BYTES);
        } catch (NoSuchAlgorithmException e) {
            throw new IllegalStateException("every Java runtime has SHA-256", e);
        }
    }

    /** What a fact holds, without the names that our code gives to its kind and its parts. */
    private static String plain(Object fact) {
        if (fact instanceof Record parts) {
            return Arrays.stream(parts.getClass().getRecordComponents()).map(part -> plain(value(part, parts)))
                    .collect(Collectors.joining(", ", "(", ")"));
        }
        if (fact instanceof Collection<?> several) {
            return several.stream().map(Digest::plain).collect(Collectors.joining(", ", "[", "]"));
        }
        if (fact instanceof Optional<?> perhaps) {
            return perhaps.map(Digest::plain).orElse("");
        }
        return fact instanceof Identified thing ? String.valueOf(thing.getId()) : String.valueOf(fact);
    }

    private static Object value(RecordComponent part, Record of) {
        try {
            part.getAccessor().setAccessible(true);
            return part.getAccessor().invoke(of);
        } catch (ReflectiveOperationException e) {
            throw new IllegalStateException("a record hands out its parts", e);
        }
    }
}
