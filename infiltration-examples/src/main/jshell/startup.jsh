// What the shell imports besides JShell's own defaults.
import java.nio.charset.StandardCharsets;
import java.nio.file.*;
import java.time.*;
import dev.infiltration.units.*;
import dev.infiltration.field.*;
import dev.infiltration.method.*;
import dev.infiltration.rate.*;
import dev.infiltration.rule.*;
import dev.infiltration.check.*;
import dev.infiltration.statistics.*;
import dev.infiltration.summary.*;
import dev.infiltration.compare.*;
import dev.infiltration.trend.*;
import dev.infiltration.plan.*;
import dev.infiltration.review.*;
import dev.infiltration.report.*;
import dev.infiltration.exchange.*;
import static dev.infiltration.examples.shell.Shorthand.*;
