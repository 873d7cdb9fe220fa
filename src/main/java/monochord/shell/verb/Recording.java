package monochord.shell.verb;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import javax.sound.midi.Sequence;
import monochord.page.StyledText;
import monochord.shell.answer.Answer;
import monochord.shell.answer.Saying;
import monochord.shell.sitting.Sitting;
import monochord.sound.MidiFile;
import monochord.sound.Performance;
import monochord.sound.WavFile;
import monochord.theory.Unreadable;

/** Writes what would be played to the files that a sentence names. */
final class Recording {
    private Recording() {}

    static boolean isWanted(Sentence sentence) {
        return sentence.has("wav") || sentence.has("midi");
    }

    /** @throws Unreadable if a name is none */
    static Answer write(Sentence sentence, Performance performance, Sitting sitting) {
        Sequence sequence = performance.sequence();
        List<String> written = new ArrayList<>();
        try {
            if (sentence.has("wav")) {
                Path file = file(sentence.option("wav").orElseThrow(), sitting);
                WavFile.write(sequence, file);
                written.add(file.toString());
            }
            if (sentence.has("midi")) {
                Path file = file(sentence.option("midi").orElseThrow(), sitting);
                MidiFile.write(sequence, file);
                written.add(file.toString());
            }
        } catch (IOException failed) {
            return Saying.failed(failed.getMessage());
        }
        return Saying.of(StyledText.of("Written: " + String.join(", ", written)));
    }

    private static Path file(Sentence.Part part, Sitting sitting) {
        return part.read(sitting.outside()::file);
    }
}
