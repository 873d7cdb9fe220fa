package monochord.shell.manual;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import monochord.shell.sentence.Usage;
import monochord.shell.sentence.Verb;
import monochord.shell.verb.Verbs;
import monochord.text.Phrase;

/**
 * The manual page, in the language of man.
 *
 * <p>Source: man-pages(7) and groff_man(7), from memory: the order of sections, what is bold, what has to be escaped.
 */
public final class ManualPage {
    private final List<String> lines = new ArrayList<>();

    private ManualPage() {}

    /** The page about these verbs. */
    public static String of(Verbs verbs) {
        ManualPage page = new ManualPage();
        page.head();
        page.verbs(verbs);
        page.options();
        page.surroundings();
        return String.join("\n", page.lines) + "\n";
    }

    private void head() {
        lines.add(".TH MONOCHORD 1");
        lines.add(".SH NAME");
        lines.add("monochord - " + escaped(Phrase.of("practical keyboard harmony at a prompt")));
        lines.add(".SH SYNOPSIS");
        lines.add(".B monochord");
        lines.add(".br");
        lines.add(".B monochord");
        lines.add(".I VERB TEXT \\fR... [\\fIOPTION\\fR ...]");
        section(
                "DESCRIPTION",
                Phrase.sentence("Alone it opens the prompt: lessons, questions, chords spelled, voiced and heard.")
                        .then(Phrase.sentence("With a verb it answers one sentence."))
                        .then(Phrase.sentence("The words need no quoting, and music needs no verb.")),
                Phrase.sentence("A hyphen in place of the text stands for each line of standard input in turn.")
                        .then(Phrase.sentence("Lines that come through a pipe are answered one by one.")));
    }

    private void verbs(Verbs verbs) {
        for (Usage.VerbTopic topic : Usage.VerbTopic.values()) {
            lines.add(".SH VERBS: " + topic.toString().toUpperCase(Locale.ROOT));
            verbs.all().stream()
                    .map(Verb::usage)
                    .filter(usage -> usage.topic() == topic)
                    .forEach(this::verb);
        }
    }

    private void verb(Usage usage) {
        item(usage.form(), usage.purpose());
        if (!usage.examples().isEmpty()) {
            lines.add(".br");
            lines.add(escaped(Phrase.of(
                    "For example: {0}",
                    Phrase.typed("monochord " + usage.examples().get(0)))));
        }
    }

    private void options() {
        lines.add(".SH OPTIONS");
        for (ProgramOption option : ProgramOption.values()) {
            item(option.form(), option.purpose());
        }
        lines.add(".SH EXIT STATUS");
        item("0", Phrase.of("done"));
        item("1", Phrase.of("the answer is no: a wrong answer, a fault found, nothing that fits"));
        item("2", Phrase.of("the sentence cannot be read"));
        item("3", Phrase.of("something outside failed: a file, a device"));
    }

    private void surroundings() {
        lines.add(".SH ENVIRONMENT");
        item("MONOCHORD_HOME", Phrase.of("the folder for a learner's own things"));
        item("MONOCHORD_LESSONS", Phrase.of("the folder with the books of lessons"));
        item("NO_COLOR, COLUMNS, TERM, LC_ALL, LC_CTYPE, LANG", Phrase.of("how a terminal is written to"));
        lines.add(".SH FILES");
        item(
                "~/.local/share/monochord",
                Phrase.of("answers, drafts, settings and history; readable by their owner alone"));
    }

    private void section(String title, Phrase... paragraphs) {
        lines.add(".SH " + title);
        for (int i = 0; i < paragraphs.length; i++) {
            if (i > 0) {
                lines.add(".PP");
            }
            lines.add(escaped(paragraphs[i]));
        }
    }

    private void item(String term, Phrase text) {
        item(Phrase.typed(term), text);
    }

    private void item(Phrase term, Phrase text) {
        lines.add(".TP");
        lines.add(".B " + escaped(term));
        lines.add(escaped(text));
    }

    /** A hyphen that is typed, a backslash, and no line that would be taken for a request. */
    private static String escaped(Phrase text) {
        String plain = text.toString().replace("\\", "\\e").replace("-", "\\-").replace("\"", "\\(dq");
        return plain.startsWith(".") || plain.startsWith("'") ? "\\&" + plain : plain;
    }
}
