/** The games of a league's review, read on the machines of an Apache Spark cluster (docs/spark.md). */
package twostrides.spark;
