package reseat.script.host;

import reseat.check.CheckInput;
import reseat.files.ScriptFile;

/** Runs scripts of one language in this process, one after the other. */
interface Runner {

    /** Does once what the first script would pay for otherwise. */
    void warm(CheckInput input);

    /** Runs a script; whatever it does, this answers, unless the process ends. */
    Reply run(ScriptFile script, CheckInput input);
}
