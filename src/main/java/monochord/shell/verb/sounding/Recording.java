package monochord.shell.verb.sounding;

import static monochord.shell.sentence.FormPart.may;
import static monochord.shell.sentence.FormPart.option;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.function.Supplier;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import monochord.shell.playback.Playable;
import monochord.shell.sentence.FormPart;
import monochord.shell.sentence.NewFile;
import monochord.shell.sentence.Sentence;
import monochord.shell.sentence.Value;
import monochord.shell.sitting.Sitting;
import monochord.sound.Directions;
import monochord.sound.Performance;
import monochord.sound.file.MidiFile;
import monochord.sound.file.WavFile;
import monochord.text.Phrase;
import monochord.theory.note.Unreadable;
import monochord.view.Answer;
import monochord.view.Answers;
import monochord.view.Statement;

/** The options that write what would sound to a file instead: {@code --wav FILE}, {@code --midi FILE}. */
public final class Recording {
    public static final String WAV = "wav";
    public static final String MIDI = "midi";

    private Recording() {}

    /** How they are written. */
    public static FormPart[] form() {
        return new FormPart[] {may(option(WAV, Value.FILE)), may(option(MIDI, Value.FILE)), may(option(NewFile.OVER))};
    }

    public static boolean isWanted(Sentence sentence) {
        return sentence.has(WAV) || sentence.has(MIDI);
    }

    /** What came of writing to the files that are named. */
    static Answer write(Sentence sentence, Performance performance, Sitting sitting) {
        return written(sentence, () -> performance, sitting).orElseThrow();
    }

    /** What came of writing, or nothing if no file is asked for. */
    static Optional<Answer> written(Sentence sentence, Supplier<Performance> sounding, Sitting sitting) {
        if (!isWanted(sentence)) {
            return Optional.empty();
        }
        apart(sentence, sitting);
        Performance performance = sounding.get();
        List<NewFile> files = Stream.of(
                        NewFile.of(sentence, WAV, sitting, WavFile.of(performance)),
                        NewFile.of(sentence, MIDI, sitting, MidiFile.of(performance.sequence())))
                .flatMap(Optional::stream)
                .toList();
        String names = files.stream().map(NewFile::name).collect(Collectors.joining(", "));
        Answer written = Statement.of(Phrase.of("Written: {0}", Phrase.typed(names)));
        return Optional.of(NewFile.writeNoted(files, sentence, sitting, written));
    }

    /** @throws Unreadable if the second file would take the place of the first */
    private static void apart(Sentence sentence, Sitting sitting) {
        Optional<Path> wav =
                sentence.option(WAV).map(part -> file(part, sitting).normalize());
        sentence.option(MIDI)
                .filter(part -> wav.equals(Optional.of(file(part, sitting).normalize())))
                .ifPresent(part -> part.read(text -> {
                    throw Unreadable.because(text, 0, "a MIDI file", "the WAV is written there", "--midi song.mid");
                }));
    }

    /** The answer, and behind it what came of writing what it is about. */
    public static Answer besides(Answer answer, Sentence sentence, Sitting sitting) {
        return written(sentence, () -> last(sitting), sitting)
                .map(written -> written.status() == Answer.DONE ? Answers.of(answer, written) : written)
                .orElse(answer);
    }

    private static Performance last(Sitting sitting) {
        return sitting.stage()
                .last(sitting.key())
                .map(take -> performed(take, sitting.stage().directions()))
                .orElseThrow();
    }

    private static Performance performed(Playable take, Directions directions) {
        PlaybackOptions.within("this", take.piece(), directions);
        return directions.perform(take.piece(), take.key());
    }

    static Path file(Sentence.SentencePart part, Sitting sitting) {
        return part.read(sitting.outside()::file);
    }
}
