package org.straddle.ui.things;

import org.eclipse.jface.resource.ImageDescriptor;
import org.eclipse.jface.resource.ImageRegistry;
import org.eclipse.jface.resource.JFaceResources;
import org.eclipse.jface.resource.ResourceLocator;
import org.eclipse.jface.viewers.DecorationOverlayIcon;
import org.eclipse.jface.viewers.IDecoration;
import org.eclipse.swt.graphics.Image;
import org.straddle.check.Severity;

/** Our drawings by name: each thing has a shape of its own, so that colour is never the only mark. */
public final class Icons {

    private Icons() {
    }

    /** A shared image; nobody may dispose of it. */
    public static Image image(String name) {
        ImageRegistry shared = JFaceResources.getImageRegistry();
        String key = path(name);
        if (shared.getDescriptor(key) == null) {
            shared.put(key, descriptor(name));
        }
        return shared.get(key);
    }

    public static ImageDescriptor descriptor(String name) {
        return ResourceLocator.imageDescriptorFromBundle(Icons.class, path(name)).orElseThrow();
    }

    /** The image with a small mark of the severity at its corner. */
    public static Image marked(String name, Severity severity) {
        ImageRegistry shared = JFaceResources.getImageRegistry();
        String key = path(name) + "#" + severity;
        if (shared.getDescriptor(key) == null) {
            shared.put(key, new DecorationOverlayIcon(image(name), descriptor("badge-" + severity.word()),
                    IDecoration.BOTTOM_RIGHT));
        }
        return shared.get(key);
    }

    public static Image of(Severity severity) {
        return image(severity.word());
    }

    private static String path(String name) {
        return "icons/" + name + ".svg";
    }
}
