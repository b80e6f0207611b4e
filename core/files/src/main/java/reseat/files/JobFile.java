package reseat.files;

import java.util.List;
import java.util.Map;
import reseat.internal.files.JobReader;
import reseat.job.Job;
import reseat.model.Device;
import reseat.model.Ordered;
import reseat.model.Origin;
import reseat.model.Problem;

/**
 * What a job file says.
 *
 * @param job the job; not held against any device yet
 * @param origins where its facts stand, by JSON Pointer into the file; the empty pointer is the
 *     whole
 */
public record JobFile(Job job, Map<String, Origin> origins) {

    public JobFile {
        origins = Ordered.copyOf(origins);
    }

    /** Returns what is wrong where the unit is one of this device: errors with their places. */
    public List<Problem> problems(Device device) {
        return JobReader.problems(this, device);
    }
}
