package org.straddle.ui.workbench;

import java.io.IOException;
import java.net.StandardProtocolFamily;
import java.net.UnixDomainSocketAddress;
import java.nio.ByteBuffer;
import java.nio.channels.ServerSocketChannel;
import java.nio.channels.SocketChannel;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HexFormat;

import org.eclipse.swt.widgets.Shell;
import org.straddle.ui.session.EventSession;
import org.straddle.ui.session.SessionListener;
import org.straddle.words.Catalogue;

/**
 * One window for an event: who starts the program with an event that a window of the same user has open brings that
 * window to the front. The two meet at a socket in the user's own folder; nothing goes over a network.
 */
final class OneWindow implements SessionListener {

    private static final Catalogue TEXTS = Catalogue.of(OneWindow.class);

    private static final String FOLDER = "windows";

    private final Path folder;
    private final Shell shell;
    private ServerSocketChannel door;
    private Path address;

    /** @param state folder of the user for what the program remembers */
    OneWindow(Path state, Shell shell) {
        this.folder = state.resolve(FOLDER);
        this.shell = shell;
    }

    /**
     * Asks the window that has the event open to come to the front.
     *
     * @return false when there is none
     */
    static boolean bringToFront(Path state, Path event) {
        try (SocketChannel channel = SocketChannel.open(StandardProtocolFamily.UNIX)) {
            channel.connect(UnixDomainSocketAddress.of(address(state.resolve(FOLDER), event)));
            // The window answers with a byte when it has done so; the end of the stream means that it could not.
            return channel.read(ByteBuffer.allocate(1)) == 1;
        } catch (IOException | RuntimeException nobody) {
            return false;
        }
    }

    @Override
    public void opened(EventSession session) {
        closed(session);
        if (session.folder().isReadOnly()) {
            return;
        }
        try {
            Files.createDirectories(folder);
            address = address(folder, session.folder().path());
            // Left over from a window that ended by force: this one holds the lock on the event.
            Files.deleteIfExists(address);
            ServerSocketChannel opened = ServerSocketChannel.open(StandardProtocolFamily.UNIX);
            door = opened;
            opened.bind(UnixDomainSocketAddress.of(address));
            Thread thread = new Thread(() -> answer(opened), TEXTS.text("oneWindow.job"));
            thread.setDaemon(true);
            thread.start();
        } catch (IOException | RuntimeException impossible) {
            // Such as a path too long for a socket: a second start then says who holds the event.
            closed(session);
        }
    }

    @Override
    public void closed(EventSession session) {
        try {
            if (door != null) {
                door.close();
                Files.deleteIfExists(address);
            }
        } catch (IOException e) {
            // The next window that opens this event removes it.
        }
        door = null;
    }

    private void answer(ServerSocketChannel opened) {
        while (opened.isOpen()) {
            try (SocketChannel channel = opened.accept()) {
                shell.getDisplay().syncExec(this::toFront);
                channel.write(ByteBuffer.wrap(new byte[] {1}));
            } catch (IOException | RuntimeException e) {
                // Closed with the event, or whoever asked went away.
            }
        }
    }

    private void toFront() {
        shell.setMinimized(false);
        shell.setActive();
        shell.forceActive();
    }

    private static Path address(Path folder, Path event) throws IOException {
        try {
            byte[] hash = MessageDigest.getInstance("SHA-256")
                    .digest(event.toRealPath().toString().getBytes(StandardCharsets.UTF_8));
            return folder.resolve(HexFormat.of().formatHex(hash, 0, 8));
        } catch (NoSuchAlgorithmException e) {
            throw new IllegalStateException(e); // every Java has it
        }
    }
}
