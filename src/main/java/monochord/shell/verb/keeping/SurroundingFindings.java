package monochord.shell.verb.keeping;

import java.util.List;
import java.util.Optional;
import javax.sound.sampled.LineUnavailableException;
import monochord.shell.sitting.Sitting;
import monochord.sound.JavaSound;
import monochord.sound.keyboard.MidiKeyboard;
import monochord.text.Phrase;

/** What the machine has: a terminal, a sound card, a keyboard. */
final class SurroundingFindings {
    private SurroundingFindings() {}

    static List<DoctorFinding> all(Sitting sitting) {
        return List.of(terminal(sitting), sound(), keyboard());
    }

    private static DoctorFinding terminal(Sitting sitting) {
        Phrase what = Phrase.of("terminal");
        String kind = Optional.ofNullable(System.getenv("TERM")).orElse("");
        return sitting.isAttended()
                ? DoctorFinding.well(
                        what,
                        "terminal",
                        Phrase.of("{0}, {1} lines", Phrase.typed(kind.isEmpty() ? "?" : kind), sitting.screenLines()))
                : DoctorFinding.well(
                        what, "terminal", Phrase.of("none: answers go through a pipe or to a command line"));
    }

    private static DoctorFinding sound() {
        Phrase what = Phrase.of("sound");
        Phrase advice = Phrase.sentence(
                "Without sound all is written and shown; {0} writes what you would hear into a file.",
                Phrase.verb("play F C G --wav song.wav"));
        try {
            JavaSound.card().close();
            return DoctorFinding.well(what, "sound", Phrase.of("there"));
        } catch (LineUnavailableException held) {
            return DoctorFinding.missing(what, "sound", Phrase.of("held by another program"), advice);
        } catch (IllegalArgumentException | SecurityException none) {
            return DoctorFinding.missing(what, "sound", Phrase.of("no sound card that Java can reach"), advice);
        }
    }

    private static DoctorFinding keyboard() {
        List<Phrase> names = MidiKeyboard.all().stream()
                .map(keyboard -> Phrase.typed(keyboard.name()))
                .toList();
        return DoctorFinding.well(
                Phrase.of("keyboard"),
                "keyboard",
                names.isEmpty() ? Phrase.of("no MIDI keyboard is plugged in") : Phrase.list(names));
    }
}
