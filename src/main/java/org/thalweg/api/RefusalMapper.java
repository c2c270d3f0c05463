package org.thalweg.api;

import jakarta.inject.Singleton;
import jakarta.ws.rs.container.ContainerRequestContext;
import jakarta.ws.rs.core.Response;
import org.jboss.resteasy.reactive.server.ServerExceptionMapper;
import org.jboss.resteasy.reactive.server.core.ResteasyReactiveRequestContext;
import org.jboss.resteasy.reactive.server.spi.ResteasyReactiveContainerRequestContext;
import org.jboss.resteasy.reactive.server.spi.ServerRequestContext;
import org.thalweg.api.json.Posted;
import org.thalweg.api.problem.NoAnswer;
import org.thalweg.api.problem.Problem;
import org.thalweg.api.problem.ProblemMappers;
import org.thalweg.api.wire.Asked;
import org.thalweg.finding.Refused;
import org.thalweg.units.Units;

/** Tells callers, in their units, why what they sent describes no roof. */
@Singleton
public class RefusalMapper {

    private final ProblemMappers mappers;

    RefusalMapper(ProblemMappers mappers) {
        this.mappers = mappers;
    }

    @ServerExceptionMapper
    public Response refused(Refused refused, ContainerRequestContext context) {
        return mappers.noAnswer(
                NoAnswer.of(Problem.NOT_A_ROOF, FindingWriter.refusals(refused.refusals(), units(context))));
    }

    /** The units of the request the resource was given; a refusal is always about a request that could be read. */
    private static Units units(ContainerRequestContext context) {
        ServerRequestContext request = ((ResteasyReactiveContainerRequestContext) context).getServerRequestContext();
        Object posted = ((ResteasyReactiveRequestContext) request).getParameters()[0];
        return ((Asked) ((Posted<?>) posted).request()).units().units();
    }
}
