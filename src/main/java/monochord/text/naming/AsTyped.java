package monochord.text.naming;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.IntPredicate;
import monochord.theory.note.NoteNaming;
import monochord.theory.note.NoteNaming.FoundName;
import monochord.theory.note.Unreadable;

/**
 * A line as a learner typed it, with the note names of some country, and what it is in English, which the engine reads.
 *
 * @param changes from the first to the second
 */
public record AsTyped(String typed, String english, NoteNaming naming, List<Renaming> changes) {
    public AsTyped {
        changes = List.copyOf(changes);
    }

    /** The line by the names of this country; what is no name stays as it is. */
    public static AsTyped of(String typed, NoteNaming naming) {
        return of(typed, naming, place -> false);
    }

    private static AsTyped of(String typed, NoteNaming naming, IntPredicate stays) {
        List<Renaming> changes = naming == NoteNaming.ENGLISH ? List.of() : new Finder(typed, naming, stays).changes();
        return new AsTyped(typed, Renaming.all(changes, typed), naming, changes);
    }

    /**
     * The line in which only what stands before this place is read; file names may follow there.
     *
     * @param stays whether the word at a place is no name, though it could be one
     */
    public static AsTyped upTo(int end, String typed, NoteNaming naming, IntPredicate stays) {
        if (naming == NoteNaming.ENGLISH) {
            return of(typed, naming);
        }
        AsTyped begun = of(typed.substring(0, end), naming, stays);
        return new AsTyped(typed, begun.english + typed.substring(end), naming, begun.changes);
    }

    /** The place in what was typed of a place in the English line, both from 0. */
    public int typedPlace(int place) {
        int grown = 0;
        for (Renaming change : changes) {
            int from = change.from() + grown;
            int to = from + change.by().length();
            if (place < from) {
                return place - grown;
            } else if (place < to) {
                return change.from();
            }
            grown += change.by().length() - (change.to() - change.from());
        }
        return place - grown;
    }

    /** The first change at this place of what was typed, or around it. */
    public Optional<Renaming> changeAt(int place) {
        return changes.stream()
                .filter(change -> change.from() <= place && place <= change.to())
                .findFirst();
    }

    /** A refusal of the English line, or of a part of it, as one of what was typed. */
    public Unreadable restored(Unreadable unreadable) {
        if (changes.isEmpty()) {
            return unreadable;
        }
        int place = typedPlace(unreadable.place());
        String part = unreadable.part();
        boolean known = unreadable.text().equals(english);
        int from = known ? unreadable.place() - unreadable.placeInPart() : english.indexOf(part);
        if (part.isEmpty() || !english.startsWith(part, from)) {
            return unreadable.asTyped(ToType.in(part, naming), unreadable.placeInPart(), typed, place);
        }
        int typedFrom = typedPlace(from);
        String shown = typed.substring(typedFrom, typedPlace(from + part.length()));
        return unreadable.asTyped(shown, typedPlace(from + unreadable.placeInPart()) - typedFrom, typed, place);
    }

    /** Goes through a line and finds its names. */
    private static final class Finder {
        private final String text;
        private final NoteNaming naming;
        private final IntPredicate stays;
        private final List<Renaming> changes = new ArrayList<>();
        private int ended = -1;

        Finder(String text, NoteNaming naming, IntPredicate stays) {
            this.text = text;
            this.naming = naming;
            this.stays = stays;
        }

        List<Renaming> changes() {
            int place = 0;
            while (place < text.length()) {
                place = isFree(place) && !stays.test(place) ? Math.max(place + 1, name(place)) : place + 1;
            }
            return changes;
        }

        private boolean isFree(int place) {
            if (place == 0) {
                return true;
            }
            char before = text.charAt(place - 1);
            return before == '/'
                    ? ended == place - 1
                    : !Character.isLetterOrDigit(before) && "_.#♯♭\\~".indexOf(before) < 0;
        }

        private int name(int place) {
            List<FoundName> together = together(place);
            if (together.size() > 1) {
                int from = place;
                for (FoundName one : together) {
                    take(from, one, one.end());
                    from = one.end();
                }
                return from;
            }
            for (FoundName found : naming.find(text, place)) {
                FoundName whole = NameWords.signs(naming, text, found);
                int end = Suffix.end(text, whole.end());
                if (end >= 0 && !isNumber(place, end)) {
                    return take(place, whole, end);
                }
            }
            return place + 1;
        }

        /** Names with capitals, written together up to the end of the word: {@code CEsG}, {@code DoMiSol}; else none. */
        private List<FoundName> together(int place) {
            List<FoundName> names = new ArrayList<>();
            int from = place;
            while (from < text.length() && Character.isLetter(text.charAt(from))) {
                Optional<FoundName> found = beginning(from);
                if (found.isEmpty()) {
                    return List.of();
                }
                names.add(found.get());
                from = found.get().end();
            }
            return names;
        }

        /** The longest name here that begins with a capital and has no other. */
        private Optional<FoundName> beginning(int from) {
            return !Character.isUpperCase(text.charAt(from))
                    ? Optional.empty()
                    : naming.find(text, from).stream()
                            .filter(name ->
                                    text.substring(from + 1, name.end()).chars().noneMatch(Character::isUpperCase))
                            .findFirst();
        }

        /** A small b before a number lowers a degree. */
        private boolean isNumber(int place, int end) {
            return text.charAt(place) == 'b' && end > place + 1 && "b♭".indexOf(text.charAt(place + 1)) < 0;
        }

        private int take(int place, FoundName name, int end) {
            if (!isEnglish(place, name)) {
                changes.add(new Renaming(place, name.end(), name.name().toString()));
            }
            ended = end;
            return end == name.end() ? NameWords.mode(naming, text, end, changes) : end;
        }

        private boolean isEnglish(int place, FoundName name) {
            return NoteNaming.ENGLISH.find(text, place).contains(name);
        }
    }
}
