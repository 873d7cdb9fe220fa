package monochord.shell.replay;

import java.io.IOException;
import java.io.InterruptedIOException;
import java.nio.file.FileVisitResult;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.SimpleFileVisitor;
import java.nio.file.attribute.BasicFileAttributes;
import java.util.Optional;
import java.util.function.LongSupplier;
import monochord.notebook.AttachedFile;
import monochord.notebook.Start;
import monochord.practice.mastery.Knowledge;
import monochord.record.Agenda;
import monochord.shell.playback.Ear;
import monochord.shell.sitting.Outside;
import monochord.shell.sitting.SeedSource;
import monochord.shell.sitting.Sitting;
import monochord.shell.storage.Keeper;
import monochord.shell.storage.Settings;
import monochord.sound.Performance;
import monochord.text.Phrase;
import monochord.theory.note.NoteNaming;
import monochord.view.Answer;
import monochord.view.Look;
import monochord.view.Statement;

/**
 * A sitting in which everything but the lines is settled beforehand: chance, clock, screen, an empty record, no settings, no
 * sound, and an empty folder that is removed at the end. What is typed in it touches nothing outside.
 */
public final class Rehearsal implements AutoCloseable {
    private final Path folder;
    private final Sitting sitting;
    private final Sitting outside;
    private final boolean trusted;
    private final WithheldRuns withheld = new WithheldRuns();
    private Performance heard;

    /**
     * @param outside whose lessons and whose understanding of lines these are
     * @param clock milliseconds since 1970 in UTC
     * @param trusted whether Java in it runs, in a cell of its own
     * @throws IOException if no folder can be made for it
     */
    Rehearsal(Start start, Sitting outside, LongSupplier clock, boolean trusted) throws IOException {
        this.outside = outside;
        folder = Files.createTempDirectory("monochord").toRealPath();
        SeedSource chance =
                start.seed().isPresent() ? SeedSource.from(start.seed().getAsLong()) : SeedSource.counting();
        var memory = new Sitting.Storage(clock, keeper(start.lesson()), Settings.inMemory());
        sitting = new Sitting(ear(), chance, folder, outside.course().afresh(), memory);
        Outside around = outside.outside();
        sitting.outside().closeOff(around.newSeal(folder));
        sitting.outside().take(around.trust().unmoved());
        sitting.outside().take(around.conversation());
        sitting.cells().take(trusted ? outside.cells().newCell() : withheld.cell());
        this.trusted = trusted;
        sitting.settle(start.key());
        sitting.startInteractive(start.notes());
        sitting.study().begin();
        sitting.setDisplay(
                Look.ofPipe().inWidth(start.screen().columns()), start.screen().lines());
    }

    /** Nothing is heard, and what would have been is remembered. */
    private Ear ear() {
        Ear silent = Ear.silent();
        return new Ear() {
            @Override
            public Phrase play(Performance performance) {
                heard = performance;
                return Phrase.NOTHING;
            }

            @Override
            public void stop() {
                silent.stop();
            }

            @Override
            public void listenToTheEnd() {
                silent.listenToTheEnd();
            }
        };
    }

    /** A record of nothing, left by somebody who was to go on with this lesson. */
    private Keeper keeper(String lesson) {
        Keeper empty = Keeper.inMemory(folder.resolve(".class"));
        return lesson.isEmpty() ? empty : new LeftOff(empty, agenda(lesson));
    }

    private Agenda agenda(String lesson) {
        return outside.course()
                .library()
                .find(lesson)
                .map(entry -> Agenda.of(
                        entry.slug(), entry.number() + " " + entry.title(), Knowledge.of(java.util.List.of())))
                .orElse(Agenda.NONE);
    }

    /** What is said before the first line. */
    Answer greeting() {
        return sitting.teaching().opening().greeting(sitting);
    }

    /** Puts a file into its folder that the notebook holds. */
    void put(AttachedFile file) throws IOException {
        sitting.outside().seal().orElseThrow().put(file.name(), file.text());
    }

    /** How many times so far Java was to run and was kept back. */
    int withheld() {
        return withheld.count();
    }

    /**
     * What is answered to a line, or to the lines of something longer.
     *
     * @throws InterruptedIOException if somebody has had enough
     */
    Answer type(String text) throws InterruptedIOException {
        if (sitting.outside().seal().orElseThrow().isStopped()) {
            throw new InterruptedIOException("Stopped; what was typed again changes nothing.");
        }
        heard = null;
        if (sitting.hasEnded()) {
            return Statement.of(Phrase.of("The sitting has ended before this line."));
        }
        if (!sitting.outside().seal().orElseThrow().takesLine()) {
            return Statement.failed(Phrase.of("This is more than a replay types."));
        }
        Answer answer = sitting.outside().conversation().read(text, sitting);
        sitting.journal().note(text, answer);
        return answer;
    }

    /** By what names notes go now. */
    NoteNaming naming() {
        return sitting.naming();
    }

    /** What the last line made heard. */
    Optional<Performance> heard() {
        return Optional.ofNullable(heard);
    }

    /** Hands all of it over to the sitting outside, its cell too; what is typed there from now on is the person's own. */
    void handOver() {
        if (!trusted) {
            sitting.cells().take(outside.cells().newCell());
        }
        outside.goOnFrom(sitting);
    }

    /** Removes the folder with all that was written there; links in it are not followed. */
    @Override
    public void close() {
        sitting.cells().take(withheld.cell());
        try {
            Files.walkFileTree(folder, new SimpleFileVisitor<>() {
                @Override
                public FileVisitResult visitFile(Path file, BasicFileAttributes about) throws IOException {
                    Files.delete(file);
                    return FileVisitResult.CONTINUE;
                }

                @Override
                public FileVisitResult postVisitDirectory(Path emptied, IOException trouble) throws IOException {
                    Files.delete(emptied);
                    return FileVisitResult.CONTINUE;
                }
            });
        } catch (IOException stays) {
            folder.toFile().deleteOnExit();
        }
    }
}
