/**
 * Clusters, parishes, churches, journeys and policies. The records named {@code …View} and {@code
 * …Form} hold what a page prints, already in words.
 */
package vestiary.cluster;
