package monochord;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.sun.source.tree.ClassTree;
import com.sun.source.util.TreeScanner;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;

/** A name that is read without its comment means one thing in the whole program. */
class NamesTest {
    /** The files in which each type is declared, those within others too. */
    private static Map<String, Set<String>> declared() {
        Map<String, Set<String>> declared = new TreeMap<>();
        JavaSources sources = JavaSources.ofTheProgram();
        sources.units()
                .forEach(unit -> new TreeScanner<Void, Void>() {
                    @Override
                    public Void visitClass(ClassTree type, Void nothing) {
                        String name = type.getSimpleName().toString();
                        if (!name.isEmpty()) {
                            declared.computeIfAbsent(name, any -> new TreeSet<>())
                                    .add(sources.file(unit));
                        }
                        return super.visitClass(type, nothing);
                    }
                }.scan(unit, null));
        return declared;
    }

    @Test
    @DisplayName("no two types have the same simple name, not inside of others either")
    void eachTypeHasItsOwnName() {
        Map<String, Set<String>> declared = declared();
        assertTrue(declared.size() > 900, () -> "only " + declared.size() + " types seen");
        Set<String> twice = new TreeSet<>();
        declared.forEach((name, files) -> {
            if (files.size() > 1) {
                twice.add(name);
            }
        });
        assertEquals(Set.of(), twice);
    }
}
