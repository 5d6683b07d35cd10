package org.straddle.demo;

import java.nio.charset.StandardCharsets;
import java.util.UUID;

import org.straddle.model.Identified;

/** Gives objects of the demo the same ids each time it is made, so that its folder can be compared byte by byte. */
final class DemoIdentity {

    private DemoIdentity() {
    }

    /** @param path unique within the demo, such as {@code site/Basalt Mark} */
    static <T extends Identified> T named(T object, String path) {
        byte[] name = ("urn:straddle:demo:" + path).getBytes(StandardCharsets.UTF_8);
        object.setId(UUID.nameUUIDFromBytes(name).toString());
        return object;
    }
}
