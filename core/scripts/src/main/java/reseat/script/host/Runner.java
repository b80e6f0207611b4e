package reseat.script.host;

import reseat.check.CheckInput;
import reseat.files.ScriptFile;

/** Runs scripts of one language in this process, one after the other. */
interface Runner {

    /** Warms up, so that the first script is not slower than others. */
    void warm(CheckInput input);

    /** Runs a script. Always returns a reply, unless the process ends. */
    Reply run(ScriptFile script, CheckInput input);
}
