package org.straddle.ui.workbench;

import java.io.IOException;
import java.net.URL;
import java.util.Enumeration;

import org.eclipse.collections.impl.list.mutable.FastList;

/**
 * Lets the Eclipse Collections find their own implementation. They look for it with the Java ServiceLoader through the
 * thread's context class loader, which in OSGi does not see the bundle that holds it; tables stay blank then. This
 * loader adds that one bundle to what the thread saw before.
 */
final class CollectionsLoader extends ClassLoader {

    private static final String PACKAGES = "org.eclipse.collections.impl.";

    private final ClassLoader implementation = FastList.class.getClassLoader();

    private CollectionsLoader(ClassLoader seenBefore) {
        super(seenBefore);
    }

    /** For the calling thread, which is to be the one that paints. */
    static void useOnThisThread() {
        Thread thread = Thread.currentThread();
        thread.setContextClassLoader(new CollectionsLoader(thread.getContextClassLoader()));
    }

    @Override
    protected Class<?> findClass(String name) throws ClassNotFoundException {
        if (name.startsWith(PACKAGES)) {
            return implementation.loadClass(name);
        }
        throw new ClassNotFoundException(name);
    }

    @Override
    protected Enumeration<URL> findResources(String name) throws IOException {
        return name.startsWith("META-INF/services/org.eclipse.collections.") ? implementation.getResources(name)
                : super.findResources(name);
    }
}
