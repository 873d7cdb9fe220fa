package monochord.shell.verb.classroom;

import java.io.IOException;
import java.nio.file.Path;
import java.util.Optional;
import monochord.classroom.ClassList;
import monochord.record.ClassRecord;
import monochord.shell.sitting.Sitting;

/**
 * The class of whoever sits here: the list of pupils, and what they gave.
 *
 * @param home the folder in which both are; none where nothing is kept in this sitting
 */
record OwnClass(Optional<Path> home, ClassList list) {
    /** @throws IOException with a message for the teacher, if the list cannot be read */
    static OwnClass of(Sitting sitting) throws IOException {
        Optional<Path> home = sitting.study().keeper().classFolder();
        ClassList list = home.isEmpty() ? ClassList.NONE : read(home.get());
        return new OwnClass(home, list);
    }

    private static ClassList read(Path home) throws IOException {
        Path file = ClassList.file(home);
        return ClassList.read(file, file.getFileName().toString());
    }

    Optional<ClassRecord> record() {
        return home.map(ClassRecord::new);
    }
}
