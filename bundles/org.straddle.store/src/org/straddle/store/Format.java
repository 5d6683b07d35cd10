package org.straddle.store;

import java.util.OptionalInt;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

import org.straddle.model.StraddlePackage;

/** The number at the end of the model's namespace: the version of the files. */
final class Format {

    private static final Pattern NAMESPACE = Pattern.compile("urn:straddle:model:([0-9]{1,9})");

    /** The newest format that this program reads, and the one that it writes. */
    static final int CURRENT = of(StraddlePackage.eNS_URI).orElseThrow();

    private Format() {
    }

    /** The format that a namespace stands for; empty when it is not one of ours. */
    static OptionalInt of(String namespace) {
        Matcher m = NAMESPACE.matcher(namespace);
        return m.matches() ? OptionalInt.of(Integer.parseInt(m.group(1))) : OptionalInt.empty();
    }
}
