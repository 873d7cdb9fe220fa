package monochord.cell.sandbox;

import java.util.Map;
import jdk.jshell.spi.ExecutionControl;
import jdk.jshell.spi.ExecutionControlProvider;
import jdk.jshell.spi.ExecutionEnv;

/** Gives JShell our engine. */
record EngineProvider(Engine engine) implements ExecutionControlProvider {
    @Override
    public String name() {
        return "monochord";
    }

    @Override
    public ExecutionControl generate(ExecutionEnv environment, Map<String, String> parameters) {
        return engine;
    }
}
