package monochord.shell;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import monochord.shell.sentence.Verb;
import monochord.shell.verb.Verbs;
import monochord.view.StrictJson;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Every object of JSON says what it is and by which version of the promise, whatever verb gave it. */
class JsonKindsTest {
    private static final Set<String> LEAVES = Set.of("quit");
    private static final List<String> MORE = List.of(
            "C4 E4 G4",
            "IV V I",
            "nonsense",
            "show Hm",
            "C - F",
            "",
            "voice C F G as choir",
            "ask interval in C",
            "E",
            "hint",
            "tell",
            "why",
            "help enter",
            "harmonise under E in C",
            "recolour C F G C in C with tritone",
            "transpose C4 E4 from C to sing A3 to D5",
            "key of C Am F G",
            "settings",
            "answers",
            "lessons 2",
            "learn 1.1",
            "");

    @TempDir
    private Path folder;

    private List<String> typed() {
        List<String> lines = new ArrayList<>();
        for (Verb verb : new Verbs().all()) {
            if (!LEAVES.contains(verb.word())) {
                lines.add(verb.word());
                lines.addAll(verb.usage().examples());
            }
        }
        lines.addAll(MORE);
        return lines;
    }

    /** What came back for each line, object by object. */
    private List<String> answers(List<String> lines) {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        byte[] typed = (String.join("\n", lines) + "\n").getBytes(StandardCharsets.UTF_8);
        Run.Outside.run(
                new Run.Outside()
                        .inFolder(folder)
                        .around(
                                new ByteArrayInputStream(typed),
                                new PrintStream(out, true, StandardCharsets.UTF_8),
                                new PrintStream(new ByteArrayOutputStream(), true, StandardCharsets.UTF_8)),
                "--json");
        return out.toString(StandardCharsets.UTF_8).lines().toList();
    }

    @Test
    @DisplayName("each object has kind and schema, and an error says so by its kind")
    void everyObjectSaysWhatItIs() {
        List<String> lines = typed();
        List<String> answers = answers(lines);
        Map<String, String> nameless = new TreeMap<>();
        Set<String> kinds = new TreeSet<>();
        for (String answer : answers) {
            Map<String, Object> object = StrictJson.object(answer);
            kinds.add(String.valueOf(object.get("kind")));
            if (!object.containsKey("kind") || !Long.valueOf(1).equals(object.get("schemaVersion"))) {
                nameless.put(answer, "has no kind or no schema");
            }
            assertEquals(object.containsKey("error"), "error".equals(object.get("kind")), answer);
        }
        assertEquals(Map.of(), nameless);
        assertTrue(answers.size() > 150, answers.size() + " objects");
        assertTrue(kinds.size() > 35, kinds.toString());
    }
}
