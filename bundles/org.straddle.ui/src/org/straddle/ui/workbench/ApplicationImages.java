package org.straddle.ui.workbench;

import java.util.stream.IntStream;

import org.eclipse.jface.resource.JFaceResources;
import org.eclipse.jface.resource.ResourceLocator;
import org.eclipse.swt.graphics.Image;

/** The program's own mark in the sizes that window systems ask for. */
final class ApplicationImages {

    private static final int[] SIZES = {16, 24, 32, 48, 64, 128, 256};

    private ApplicationImages() {
    }

    static Image[] all() {
        return IntStream.of(SIZES).mapToObj(ApplicationImages::image).toArray(Image[]::new);
    }

    static Image image(int size) {
        String path = "icons/straddle" + size + ".png";
        if (JFaceResources.getImage(path) == null) {
            JFaceResources.getImageRegistry().put(path,
                    ResourceLocator.imageDescriptorFromBundle(ApplicationImages.class, path).orElseThrow());
        }
        return JFaceResources.getImage(path);
    }
}
