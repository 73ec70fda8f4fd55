/**
 * YAML text in, spec or findings out; nothing else knows YAML. Start with {@link rungwright.yaml.SpecReader}
 * and {@link rungwright.yaml.Reading}.
 */
package rungwright.yaml;
