package monochord.shell.verb.sounding;

import static monochord.shell.sentence.FormPart.may;
import static monochord.shell.sentence.FormPart.takes;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import monochord.shell.keyboard.MidiSession;
import monochord.shell.sentence.Sentence;
import monochord.shell.sentence.Usage;
import monochord.shell.sentence.Value;
import monochord.shell.sentence.Verb;
import monochord.shell.sitting.Sitting;
import monochord.shell.sound.KeyboardsAnswer;
import monochord.sound.keyboard.KeyboardTrouble;
import monochord.sound.keyboard.MidiKeyboard;
import monochord.text.Phrase;
import monochord.theory.note.Unreadable;
import monochord.view.Answer;
import monochord.view.NotebookRemark;
import monochord.view.Statement;

/** Lists the MIDI keyboards that are plugged in, and connects one. */
final class KeysVerb implements Verb {
    private static final String OFF = "off";

    private MidiSession seat;

    @Override
    public String word() {
        return "keys";
    }

    @Override
    public Usage usage() {
        return Usage.of(
                        word(),
                        Usage.VerbTopic.SOUND,
                        Phrase.of("play on a MIDI keyboard: list what is plugged in, connect one"))
                .form(may(takes(List.of(Value.NUMBER, Value.NAME), OFF)))
                .examples("keys", "keys 1", "keys off");
    }

    /** What is plugged in hangs on the day, and is no part of a notebook. */
    @Override
    public Answer run(Sentence sentence, Sitting sitting) {
        return new NotebookRemark(keyboards(sentence, sitting));
    }

    private Answer keyboards(Sentence sentence, Sitting sitting) {
        if (sitting.outside().seal().isPresent()) {
            return new KeyboardsAnswer(List.of(), "", nothingThere());
        }
        String wish = sentence.body().text().strip();
        if (wish.equalsIgnoreCase(OFF)) {
            return off();
        }
        List<MidiKeyboard> there = MidiKeyboard.all();
        if (there.isEmpty()) {
            return list(there, nothingThere());
        } else if (!sitting.stage().board().isThere()) {
            return list(there, Phrase.of("A keyboard can be played at the prompt: start monochord alone."));
        }
        Optional<MidiKeyboard> chosen = wish.isEmpty() ? obvious(there) : Optional.of(chosen(wish, there));
        return chosen.map(keyboard -> connect(keyboard, sitting))
                .orElseGet(() -> list(
                        there,
                        connected().isEmpty() ? Phrase.of("Type keys and a number to connect one.") : Phrase.NOTHING));
    }

    private static Phrase nothingThere() {
        return Phrase.of("No MIDI keyboard is plugged in. Plug one in, switch it on, and type keys again.");
    }

    private Answer off() {
        String name = connected();
        if (name.isEmpty()) {
            return Statement.of(Phrase.of("No keyboard is connected."));
        }
        seat.disconnect();
        return Statement.of(Phrase.of("{0} is let go.", Phrase.typed(name)));
    }

    private String connected() {
        return seat == null ? "" : seat.connected().orElse("");
    }

    private Answer list(List<MidiKeyboard> there, Phrase remark) {
        return new KeyboardsAnswer(there.stream().map(MidiKeyboard::name).toList(), connected(), remark);
    }

    /** If none is connected: the one that had gone and is there again, or the only one. */
    private Optional<MidiKeyboard> obvious(List<MidiKeyboard> there) {
        if (!connected().isEmpty()) {
            return Optional.empty();
        }
        String lost = seat == null ? "" : seat.lost();
        return there.stream()
                .filter(keyboard -> there.size() == 1 || keyboard.name().equals(lost))
                .findFirst();
    }

    /** By its number, its name, or a part of its name. */
    private static MidiKeyboard chosen(String wish, List<MidiKeyboard> there) {
        if (wish.matches("[1-9][0-9]?") && Integer.parseInt(wish) <= there.size()) {
            return there.get(Integer.parseInt(wish) - 1);
        }
        String part = wish.toLowerCase(Locale.ROOT);
        return there.stream()
                .filter(keyboard -> keyboard.name().toLowerCase(Locale.ROOT).contains(part))
                .findFirst()
                .orElseThrow(() -> Unreadable.because(
                        wish, 0, "a keyboard", "its number or name is needed; keys alone lists them", "keys 1"));
    }

    private Answer connect(MidiKeyboard keyboard, Sitting sitting) {
        if (seat == null) {
            seat = new MidiSession(sitting.stage());
        }
        try {
            seat.connect(keyboard);
            return Statement.of(Phrase.of(
                    "{0} is connected; it sounds by itself, I only listen. What you hold is named, and questions can be"
                            + " answered by playing.",
                    Phrase.typed(keyboard.name())));
        } catch (KeyboardTrouble trouble) {
            return Statement.failed(trouble.phrase());
        }
    }
}
