# Loading is once for all in a session, so tests of loading need fresh ones.

<#
.SYNOPSIS
Runs a script in a new process of this same PowerShell and returns what it writes, as objects.
.DESCRIPTION
The script gets -Arguments by position. Its output crosses over as JSON, so it should be plain. An error in it is thrown here.
#>
function Invoke-NewSession {
    param([Parameter(Mandatory)] [scriptblock] $Script, [object[]] $Arguments = @())

    $folder = New-Item -ItemType Directory -Path (Join-Path ([IO.Path]::GetTempPath()) "layertools-$([guid]::NewGuid())")
    try {
        Set-Content -LiteralPath (Join-Path $folder 'body.ps1') -Value $Script.ToString() -Encoding utf8
        ConvertTo-Json @($Arguments) | Set-Content -LiteralPath (Join-Path $folder 'arguments.json') -Encoding utf8
        Set-Content -LiteralPath (Join-Path $folder 'run.ps1') -Encoding utf8 -Value @'
$ErrorActionPreference = 'Stop'
$arguments = @(Get-Content -LiteralPath "$PSScriptRoot/arguments.json" -Raw | ConvertFrom-Json | ForEach-Object { $_ })
$output = @(& "$PSScriptRoot/body.ps1" @arguments)
ConvertTo-Json $output -Depth 4 | Set-Content -LiteralPath "$PSScriptRoot/output.json" -Encoding utf8
'@
        $first = [Environment]::GetCommandLineArgs()[0]
        $prefix = @(if ($first -like '*.dll') { $first })
        $log = & (Get-Process -Id $PID).Path @prefix -NoLogo -NoProfile -NonInteractive -File (Join-Path $folder 'run.ps1') 2>&1 | Out-String
        $result = Join-Path $folder 'output.json'
        if (-not (Test-Path -LiteralPath $result)) { throw "The new session failed: $log" }
        Get-Content -LiteralPath $result -Raw | ConvertFrom-Json | ForEach-Object { $_ }
    }
    finally {
        Remove-Item -LiteralPath $folder -Recurse -Force
    }
}

Export-ModuleMember -Function Invoke-NewSession
