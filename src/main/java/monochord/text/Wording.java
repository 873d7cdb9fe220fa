package monochord.text;

import java.util.ArrayList;
import java.util.List;
import java.util.function.IntConsumer;
import monochord.text.Language.ListPatterns;
import monochord.text.naming.ToType;
import monochord.theory.Scale;

/** Puts one phrase into words for one reader. */
final class Wording {
    private static final int PLACE_LENGTH = 3;

    private final Reader reader;
    private final List<Span> spans = new ArrayList<>();
    private Style style = Style.PLAIN;
    private boolean capital;

    Wording(Reader reader) {
        this.reader = reader;
    }

    StyledLine of(Phrase phrase) {
        say(phrase);
        return new StyledLine(spans);
    }

    private void say(Phrase phrase) {
        PhraseContent content = phrase.content();
        if (content instanceof PhraseContent.Template template) {
            capital |= template.isSentence();
            fill(reader.language().template(template.english()), template.parts());
        } else if (content instanceof PhraseContent.Counted counted) {
            fill(reader.language().counted(counted.count(), counted.english()), counted.parts());
        } else if (content instanceof PhraseContent.ByNaming naming) {
            String english = naming.english().get(reader.signs().naming().ordinal());
            fill(reader.language().template(english), List.of());
        } else if (content instanceof PhraseContent.Listed listed) {
            list(listed.items(), listed.items().size(), reader.language().list(listed.conjunction()));
        } else if (content instanceof PhraseContent.Joined joined) {
            join(joined);
        } else if (content instanceof PhraseContent.Styled styled) {
            sayIn(styled.style(), styled.phrase());
        } else {
            sayName(content);
        }
    }

    private void sayName(PhraseContent content) {
        if (content instanceof PhraseContent.MusicSymbol music) {
            name(music.value().write(reader.signs()));
        } else if (content instanceof PhraseContent.Typed typed) {
            name(SafeText.oneLine(typed.text()));
        } else if (content instanceof PhraseContent.ToBeTyped example) {
            name(SafeText.oneLine(ToType.in(example.english(), reader.signs().naming())));
        } else if (content instanceof PhraseContent.Number number) {
            words(reader.language().number(number.number()));
        } else if (content instanceof PhraseContent.ScaleName name) {
            scale(name.scale());
        } else if (content instanceof PhraseContent.KindOfScale name) {
            words(reader.language().scaleKind(name.kind()));
        } else if (content instanceof PhraseContent.IntervalName name) {
            words(reader.language().interval(name.interval()));
        } else if (content instanceof PhraseContent.OneInterval name) {
            words(reader.language().oneInterval(name.interval()));
        } else if (content instanceof PhraseContent.IntervalNumberInWords name) {
            words(reader.language().intervalNumber(name.number()));
        } else if (content instanceof PhraseContent.DegreeInWords name) {
            words(reader.language().degree(name.degree()));
        }
    }

    private void scale(Scale scale) {
        name(scale.tonic().write(reader.signs()));
        words(" " + reader.language().scaleKind(scale.kind()));
    }

    private void sayIn(Style other, Phrase phrase) {
        Style before = style;
        style = other;
        say(phrase);
        style = before;
    }

    private void join(PhraseContent.Joined joined) {
        for (int i = 0; i < joined.items().size(); i++) {
            if (i > 0) {
                name(joined.between());
            }
            say(joined.items().get(i));
        }
    }

    /** The first so many items of a list; the pattern before an item tells whether it is the last. */
    private void list(List<Phrase> items, int count, ListPatterns patterns) {
        if (count < 2) {
            items.stream().limit(count).forEach(this::say);
            return;
        }
        String pattern = count < items.size() ? patterns.more() : count == 2 ? patterns.pair() : patterns.last();
        fill(pattern, 2, place -> {
            if (place == 0) {
                list(items, count - 1, patterns);
            } else {
                say(items.get(count - 1));
            }
        });
    }

    private void fill(String template, List<Phrase> parts) {
        fill(template, parts.size(), place -> say(parts.get(place)));
    }

    /** Says a template of this language with its places filled; what looks like a place and is none stays as it is. */
    private void fill(String template, int places, IntConsumer filling) {
        int said = 0;
        for (int open = template.indexOf('{'); open >= 0; open = template.indexOf('{', open + 1)) {
            int place = place(template, open);
            if (place >= 0 && place < places) {
                words(template.substring(said, open));
                filling.accept(place);
                said = open + PLACE_LENGTH;
            }
        }
        words(template.substring(said));
    }

    /** The number of the place that opens here, 0 to 9, or −1. */
    private static int place(String template, int open) {
        boolean closes = open + 2 < template.length() && template.charAt(open + 2) == '}';
        return closes ? Character.digit(template.charAt(open + 1), 10) : -1;
    }

    /** Words of a language: the first letter of a sentence gets its capital here. */
    private void words(String text) {
        if (capital && !text.isEmpty()) {
            add(capitalized(text));
        } else {
            add(text);
        }
    }

    private String capitalized(String text) {
        for (int i = 0; i < text.length(); i++) {
            if (Character.isLetterOrDigit(text.charAt(i))) {
                capital = false;
                return text.substring(0, i) + Character.toUpperCase(text.charAt(i)) + text.substring(i + 1);
            }
        }
        return text;
    }

    /** What no language changes; a sentence that begins with it has begun. */
    private void name(String text) {
        capital &= text.isEmpty();
        add(text);
    }

    private void add(String text) {
        spans.add(new Span(reader.signs().isAscii() ? Ascii.of(text) : text, style));
    }
}
