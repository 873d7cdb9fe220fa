package monochord.shell.journal;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.channels.FileChannel;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.util.Optional;
import java.util.function.Supplier;
import monochord.file.OwnerOnly;
import monochord.text.Failure;
import monochord.text.Phrase;

/** The draft of one sitting. It is only ever added to, and what is added is on disk before the next prompt. */
final class Draft implements Drafting {
    private final Drafts drafts;
    private final boolean foreign;
    private Path file;
    private FileChannel channel;
    private boolean failed;

    Draft(Drafts drafts, boolean foreign) {
        this.drafts = drafts;
        this.foreign = foreign;
    }

    @Override
    public boolean isKept() {
        return !failed;
    }

    @Override
    public Optional<Phrase> append(Supplier<String> all, Supplier<String> behind) {
        if (failed) {
            return Optional.empty();
        }
        try {
            if (channel == null) {
                begin();
                write(all.get());
            } else {
                write(behind.get());
            }
            return Optional.empty();
        } catch (IOException wrong) {
            failed = true;
            return Optional.of(Phrase.of(
                    "No draft of this sitting can be kept ({0}): save it now and then.", Failure.told(wrong)));
        }
    }

    private void begin() throws IOException {
        file = drafts.newFile(foreign);
        channel = FileChannel.open(file, StandardOpenOption.WRITE, StandardOpenOption.CREATE_NEW);
        OwnerOnly.file(file);
        channel.tryLock(); // where locks are not to be had, a living sitting may be offered: no harm is done
    }

    private void write(String text) throws IOException {
        ByteBuffer bytes = ByteBuffer.wrap(text.getBytes(StandardCharsets.UTF_8));
        while (bytes.hasRemaining()) {
            channel.write(bytes);
        }
        channel.force(false);
    }

    @Override
    public void leave(boolean saved) {
        if (channel == null) {
            return;
        }
        try {
            channel.close();
            channel = null;
            drafts.leaves(file);
            if (saved) {
                Files.delete(file);
            } else {
                String name = file.getFileName().toString();
                Files.move(file, file.resolveSibling(Drafts.LEFT + name.substring(Drafts.OPEN.length())));
            }
        } catch (IOException stays) {
            failed = true;
        }
    }

    @Override
    public Drafting another(boolean isForeign) {
        return new Draft(drafts, isForeign);
    }
}
