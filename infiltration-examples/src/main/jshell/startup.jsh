// What the shell imports besides JShell's own defaults.
import java.nio.charset.StandardCharsets;
import java.time.*;
import dev.infiltration.units.*;
import dev.infiltration.field.*;
