<#-- Every block, one file each. -->
<#include "heading.ftl">
<#include "mains.ftl">
<#include "dimmer.ftl">
<#include "surge.ftl">
<#include "network.ftl">
<#include "filter.ftl">
<#include "bleeder.ftl">
<#include "bias.ftl">
<#include "bridge.ftl">
<#include "bus.ftl">
<#include "stage.ftl">
<#include "output.ftl">
<#include "control.ftl">
<#include "probes.ftl">
<#include "run.ftl">
