package org.straddle.store;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;

/** The files that lie in a folder now, to be listed and read on any thread without following a link. */
public final class KeptFolder {

    private final Place place;

    KeptFolder(Place place) {
        this.place = place;
    }

    /** A folder that a user chose; it need not exist. */
    public static KeptFolder of(Path folder) {
        return new KeptFolder(new EventTree(folder.toAbsolutePath().normalize()).at(""));
    }

    /**
     * All plain files in it and in the folders in it, by name.
     *
     * @throws IOException when it cannot be read, or is a link
     */
    public List<KeptFile> files() throws IOException {
        int before = place.isRoot() ? 0 : place.name().length() + 1;
        return place.tree().files(place).stream().map(file -> KeptFile.onDisk(file.name().substring(before), file))
                .filter(KeptFile::exists).toList();
    }

    @Override
    public String toString() {
        return place.path().toString();
    }
}
