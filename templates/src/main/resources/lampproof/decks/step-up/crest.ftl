<#import "../blocks/blocks.ftl" as block>
<#import "converter.ftl" as stage>
<@block.heading/>
<@block.mains held=true/>
<@block.filter/>
<@block.bridge/>
<@block.bus/>
<@stage.converter held=true/>
.end
