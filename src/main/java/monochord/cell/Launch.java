package monochord.cell;

import java.io.File;
import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import monochord.cell.protocol.WorkingFolder;
import monochord.cell.sandbox.SandboxMain;

/**
 * How the JVM of a cell is started: with this program's own classes and the JDK it runs on, little memory, a working folder
 * of its own, hardly any environment, no terminal, and shut off as far as the system does that.
 */
record Launch(WorkingFolder folder) {
    private static final List<String> FLAGS = List.of(
            "-Xmx256m",
            "-XX:MaxMetaspaceSize=128m",
            "-XX:MaxDirectMemorySize=32m",
            "-XX:+ExitOnOutOfMemoryError",
            "-XX:-CreateCoredumpOnCrash",
            "-XX:TieredStopAtLevel=1",
            "-XX:+UseSerialGC",
            "-XX:-UsePerfData",
            "-XX:+DisplayVMOutputToStderr",
            "-Xshare:auto",
            "-Xlog:disable",
            "-Dfile.encoding=UTF-8",
            "-Djava.awt.headless=true",
            "-Djdk.console=java.base",
            "-Djdk.virtualThreadScheduler.parallelism=2",
            "-Djdk.virtualThreadScheduler.maxPoolSize=8",
            "-Djdk.lang.Process.launchMechanism=none");

    /** From this version on a JVM can be told that nobody may reach out of it into native code. */
    private static final int SINCE_DENIAL = 24;

    private static final String DENIAL = "--illegal-native-access=deny";

    /** Variables that a JVM needs on one system or another; all others are the learner's own business. */
    private static final Set<String> ENVIRONMENT = Set.of("LANG", "LC_ALL", "LC_CTYPE", "SystemRoot", "TEMP", "TMP");

    /** Starts it; the line talks to it over its standard streams, and what the JVM itself complains of is dropped. */
    Process start() throws IOException {
        ProcessBuilder builder = new ProcessBuilder(command())
                .directory(folder.path().toFile())
                .redirectError(ProcessBuilder.Redirect.DISCARD);
        builder.environment().keySet().removeIf(name -> !ENVIRONMENT.contains(name));
        return builder.start();
    }

    private List<String> command() {
        List<String> command = new ArrayList<>();
        // A session of its own, and so no terminal and no keys. Some systems have no such program.
        Confinement.program("setsid").ifPresent(command::add);
        command.addAll(Confinement.prefix());
        command.add(Path.of(System.getProperty("java.home"), "bin", "java").toString());
        command.addAll(FLAGS);
        if (Runtime.version().feature() >= SINCE_DENIAL) {
            command.add(DENIAL);
        }
        command.add("-Duser.home=" + folder.path());
        command.add("-Djava.io.tmpdir=" + folder.path());
        command.addAll(List.of("-cp", classPath(), SandboxMain.class.getName()));
        return command;
    }

    /** As it is here, in full, for the JVM starts in another folder. */
    private static String classPath() {
        return Arrays.stream(System.getProperty("java.class.path").split(File.pathSeparator))
                .map(entry -> Path.of(entry).toAbsolutePath().toString())
                .collect(Collectors.joining(File.pathSeparator));
    }
}
