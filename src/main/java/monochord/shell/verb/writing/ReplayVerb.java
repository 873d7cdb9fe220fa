package monochord.shell.verb.writing;

import static monochord.shell.sentence.FormPart.may;
import static monochord.shell.sentence.FormPart.option;
import static monochord.shell.sentence.FormPart.takes;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import monochord.file.WholeFile;
import monochord.notebook.NotebookReader;
import monochord.notebook.NotebookReading;
import monochord.shell.replay.Replay;
import monochord.shell.replay.ReplayAnswer;
import monochord.shell.replay.ReplayAnswer.ReplayedFile;
import monochord.shell.replay.Replayed;
import monochord.shell.sentence.Sentence;
import monochord.shell.sentence.Usage;
import monochord.shell.sentence.Value;
import monochord.shell.sentence.Verb;
import monochord.shell.sitting.ReplaySandbox;
import monochord.shell.sitting.Sitting;
import monochord.text.Phrase;
import monochord.theory.note.Unreadable;
import monochord.view.Answer;
import monochord.view.NotebookRemark;
import monochord.view.Statement;

/** Types the lines of notebooks again and tells where the answers differ. */
final class ReplayVerb implements Verb {
    private static final String ACCEPT = "accept";
    private static final String TRUST = "trust";

    @Override
    public String word() {
        return "replay";
    }

    @Override
    public Usage usage() {
        return Usage.of(
                        word(),
                        Usage.VerbTopic.WRITING,
                        Phrase.of(
                                "type a notebook's lines again and tell what is answered otherwise; --accept rewrites"))
                .form(takes(Value.FILES), may(option(ACCEPT)), may(option(TRUST)))
                .examples("replay evening.md", "replay evening.md --accept");
    }

    @Override
    public Answer run(Sentence sentence, Sitting sitting) {
        Sentence.SentencePart said = sentence.body();
        if (said.isEmpty()) {
            throw Unreadable.because(sentence.whole(), 0, "a notebook", "a name is needed", "replay evening.md");
        }
        if (sitting.outside().seal().filter(ReplaySandbox::isDeepest).isPresent()) {
            return new NotebookRemark(Statement.failed(Phrase.of("A replay in a replay begins no third.")));
        }
        List<ReplayedFile> played = new ArrayList<>();
        for (String word : NotebookFiles.named(said, sitting)) {
            String name = NotebookFiles.name(word);
            Path file = said.read(text -> sitting.outside().file(name));
            played.add(replay(name, file, sentence, sitting));
        }
        return new NotebookRemark(new ReplayAnswer(played));
    }

    private static ReplayedFile replay(String name, Path file, Sentence sentence, Sitting sitting) {
        NotebookReading reading = NotebookReader.read(file);
        if (!reading.isSound()) {
            return new ReplayedFile(name, NotebookFiles.named(reading.faults(), sitting), null, false, Phrase.NOTHING);
        }
        boolean asked = sentence.has(TRUST) && sitting.outside().seal().isEmpty();
        boolean trusted = asked || sitting.outside().trust().isTrusted(file, reading.digest());
        try {
            Replayed replayed = Replay.of(reading.notebook().orElseThrow(), sitting, trusted);
            boolean accept = sentence.has(ACCEPT) && !replayed.differences().isEmpty();
            return accept
                    ? accepted(name, file, replayed, sitting)
                    : new ReplayedFile(name, List.of(), replayed, false, Phrase.NOTHING);
        } catch (IOException failed) {
            return new ReplayedFile(
                    name, List.of(), null, false, sitting.outside().told(failed));
        }
    }

    private static ReplayedFile accepted(String name, Path file, Replayed replayed, Sitting sitting) {
        try {
            WholeFile.write(
                    file, part -> Files.writeString(part, replayed.played().toString()));
            return new ReplayedFile(name, List.of(), replayed, true, Phrase.NOTHING);
        } catch (IOException failed) {
            return new ReplayedFile(
                    name, List.of(), replayed, false, sitting.outside().told(failed));
        }
    }
}
